package judge

import (
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/schema/source"
)

// Equivalent is a mutant that means the same as the rule, so that no test can
// notice it. METADATA lists them under custom, with the reason:
//
//	equivalent:
//	  - mutant: without count(s.protections) == 0
//	    reason: a string has one protection or none, and the other definition has those with one
//
// A mutant is named as reports show it. One that is noticed after all, or that
// does not exist, is a finding of the codebook's test.
type Equivalent struct {
	Mutant string
	Reason string
	At     source.Range
}

var equivalentKeys = []string{"mutant", "reason"}

func (m *metadata) equivalents(custom map[string]any) []Equivalent {
	v, ok := custom["equivalent"]
	if !ok {
		return nil
	}
	at := m.place("equivalent")
	list, ok := v.([]any)
	if !ok {
		m.bad(at, "", "METADATA: equivalent is a list of mutants, each with mutant and reason, not %v", v)
		return nil
	}
	var all []Equivalent
	seen := map[string]bool{}
	for _, item := range list {
		pairs, ok := item.(map[string]any)
		if !ok {
			m.bad(at, "", "METADATA: equivalent: each has mutant and reason; this is %v", item)
			continue
		}
		for _, key := range slices.Sorted(maps.Keys(pairs)) {
			if !slices.Contains(equivalentKeys, key) {
				m.bad(at, source.Nearest(key, equivalentKeys), "METADATA: equivalent has no key %q", key)
			}
		}
		e := Equivalent{At: at}
		e.Mutant, _ = pairs["mutant"].(string)
		e.Reason, _ = pairs["reason"].(string)
		e.Mutant, e.Reason = strings.TrimSpace(e.Mutant), strings.TrimSpace(e.Reason)
		switch {
		case e.Mutant == "" || e.Reason == "":
			m.bad(at, "", "METADATA: equivalent: mutant and reason are owed, both texts")
		case len(e.Reason) > longestText:
			m.bad(at, "", "METADATA: equivalent: the reason is longer than %d bytes", longestText)
		case seen[e.Mutant]:
			m.bad(at, "", "METADATA: equivalent lists %q twice", e.Mutant)
		}
		seen[e.Mutant] = true
		all = append(all, e)
	}
	return all
}

// readEquivalents reads what the METADATA of a module of shared/ lists, which
// may have none.
func readEquivalents(file *source.File, module *ast.Module) ([]Equivalent, source.Problems) {
	m := newMetadata(file, module)
	if m.block == nil {
		return nil, m.problems
	}
	m.keys()
	for _, key := range slices.Sorted(maps.Keys(m.block.Custom)) {
		if key != "equivalent" {
			m.bad(m.place(key), source.Nearest(key, []string{"equivalent"}), "METADATA: custom of shared/ has no key %q", key)
		}
	}
	return m.equivalents(m.block.Custom), m.problems
}
