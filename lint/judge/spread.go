package judge

import (
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// callNames are the names by which a function can be called: from its own
// package by its bare name, from a rule those of shared/ through the import.
func callNames(book, function string, shared bool) []string {
	if !shared {
		return []string{function}
	}
	return []string{"shared." + function, sharedRef(book).String() + "." + function}
}

// spread finds the functions of shared/ and of a rule that have a property: by
// themselves, or because they call one that has it. has is asked with the names
// that are known to have it so far, as that function's package would call them.
func spread(book string, shared, own []*ast.Rule, has func(r *ast.Rule, known map[string]bool) bool) map[string]bool {
	local, known := map[string]bool{}, map[string]bool{}
	for changed := true; changed; {
		changed = false
		for _, r := range shared {
			name := r.Head.Name.String()
			if len(r.Head.Args) > 0 && !local[name] && has(r, local) {
				local[name], changed = true, true
				for _, n := range callNames(book, name, true) {
					local[n], known[n] = true, true
				}
			}
		}
	}
	for changed := true; changed; {
		changed = false
		for _, r := range own {
			name := r.Head.Name.String()
			if len(r.Head.Args) > 0 && !known[name] && has(r, known) {
				known[name], changed = true, true
			}
		}
	}
	return known
}

// formulaMakers finds the functions whose result is a formula: one that fact.*
// made, one that another such function gave, or a fact.
func formulaMakers(words *vocabulary, book string, shared, own []*ast.Rule) map[string]bool {
	return spread(book, shared, own, func(r *ast.Rule, known map[string]bool) bool {
		for ; r != nil; r = r.Else {
			if yieldsFormula(words, known, r) {
				return true
			}
		}
		return false
	})
}

func yieldsFormula(words *vocabulary, makes map[string]bool, r *ast.Rule) bool {
	value := r.Head.Value
	if value == nil {
		return false
	}
	if v, ok := value.Value.(ast.Var); ok { // f(x) := y if { y := fact.times(...) }
		for _, e := range r.Body {
			if e.IsAssignment() && e.Operand(0).Value.Compare(v) == 0 {
				value = e.Operand(1)
			}
		}
	}
	switch v := value.Value.(type) {
	case ast.Call:
		name := v[0].String()
		return makes[name] || strings.HasPrefix(name, "fact.") && name != "fact.value"
	case ast.Ref:
		last, ok := v[len(v)-1].Value.(ast.String)
		return ok && len(v) > 1 && words.leaves[string(last)] && !words.steps[string(last)]
	}
	return false
}

// valueReaders finds the functions that call fact.value, or one that does.
func valueReaders(book string, shared, own []*ast.Rule) map[string]bool {
	return spread(book, shared, own, func(r *ast.Rule, known map[string]bool) bool { return readsValues(r, known) })
}

// readsValues tells whether a module or a rule calls fact.value.
func readsValues(node any, readers map[string]bool) bool {
	found := false
	ast.WalkRefs(node, func(r ast.Ref) bool {
		name := r.String()
		found = found || name == "fact.value" || readers[name]
		return found
	})
	ast.WalkVars(node, func(v ast.Var) bool {
		found = found || readers[string(v)]
		return found
	})
	return found
}
