package judge

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/codebook"
	"stringline/schema/source"
)

// Rule is what a codebook says about one of its rules.
type Rule struct {
	ID          string // "limits.cold_voltage"
	Title       string // one line
	Description string // why: what happens where it is not kept
	Each        string // the collection whose every member is owed a record
	Source      string // a text for people: clause, data sheet or "common practice"
	Remedy      string
	Grade       verdict.Grade
	Waivable    bool
	Cites       []string     // keys of the codebook's sources
	Equivalent  []Equivalent // mutants that mean the same as the rule
	Answers     []Answer     // rules of other codebooks that it answers
	Yields      []string     // figures for want of which it lets another rule answer
	At          source.Range // its package
}

var (
	metadataKeys = []string{"title", "description", "custom"}
	customKeys   = []string{"grade", "each", "source", "remedy", "waivable", "cites", "equivalent", "answers", "yields"}
	grades       = []string{string(verdict.Stop), string(verdict.Fix), string(verdict.Advise)}
)

// Bounds on texts, so that a report stays readable.
const (
	longestTitle = 120
	longestText  = 1000
)

// metadata reads the METADATA block above a rule's package. The engine ignores
// keys that it does not know, so a misspelt one is found here.
type metadata struct {
	file     *source.File
	module   *ast.Module
	problems source.Problems
	block    *ast.Annotations
}

// newMetadata finds the block, which may be missing, and refuses other annotations.
func newMetadata(file *source.File, module *ast.Module) *metadata {
	m := &metadata{file: file, module: module}
	for _, a := range module.Annotations {
		if a.Scope == "package" && m.block == nil {
			m.block = a
		}
	}
	m.others()
	return m
}

func readMetadata(file *source.File, module *ast.Module, book *codebook.Codebook, id string) (Rule, source.Problems) {
	m := newMetadata(file, module)
	at := rangeOf(module.Package.Location)
	rule := Rule{ID: id, At: at, Waivable: true}
	if m.block == nil {
		m.bad(at, "", "the rule has no METADATA above its package")
		return rule, m.problems
	}
	m.keys()
	rule.Title = m.text("title", m.block.Title, longestTitle)
	rule.Description = m.text("description", m.block.Description, longestText)
	custom := m.block.Custom
	for _, key := range slices.Sorted(maps.Keys(custom)) {
		if !slices.Contains(customKeys, key) {
			m.bad(m.place(key), source.Nearest(key, customKeys), "METADATA: custom has no key %q", key)
		}
	}
	rule.Grade = verdict.Grade(m.oneOf(custom, "grade", grades))
	rule.Each = m.oneOf(custom, "each", collectionNames())
	rule.Source = m.customText(custom, "source")
	rule.Remedy = m.customText(custom, "remedy")
	if v, ok := custom["waivable"]; ok {
		if rule.Waivable, ok = v.(bool); !ok {
			m.bad(m.place("waivable"), "", "METADATA: waivable is true or false, not %v", v)
		}
	}
	rule.Cites = m.cites(custom, book)
	rule.Equivalent = m.equivalents(custom)
	rule.Answers, rule.Yields = m.answers(custom, id), m.yields(custom)
	if len(rule.Cites) == 0 && rule.Source != "" && !restsOnNoText(rule.Source) {
		m.bad(m.place("source"), "", `METADATA: a rule without cites rests on "common practice" or on a maker's data sheet: say so in its source, or cite a source of the codebook`)
	}
	return rule, m.problems
}

// restsOnNoText tells whether a source names no text that has to be cited.
func restsOnNoText(s string) bool {
	s = strings.ToLower(s)
	return strings.Contains(s, "common practice") || strings.Contains(s, "data sheet")
}

func collectionNames() []string {
	var names []string
	for _, c := range facts.Collections() {
		names = append(names, c.Name)
	}
	return names
}

func (m *metadata) bad(at source.Range, near, format string, args ...any) {
	m.problems = append(m.problems, source.Problem{Kind: "metadata", Message: fmt.Sprintf(format, args...), Near: near, At: at})
}

// others refuses annotations that mean something else to the engine: one of
// schemas could tell its type checker to believe anything.
func (m *metadata) others() {
	for _, a := range m.module.Annotations {
		if len(a.Schemas) > 0 {
			m.bad(rangeOf(a.Location), "", "METADATA: schemas may not be given: the types of input are those of the fact table")
		}
		if a != m.block && (a.Scope == "package" || a.Scope == "subpackages") {
			m.bad(rangeOf(a.Location), "", "METADATA: one block a rule, above its package")
		}
	}
}

// keys finds the block's own keys: lines that start without an indent.
func (m *metadata) keys() {
	first, last := m.block.Location.Row, m.block.EndLoc().Row
	for _, c := range m.module.Comments {
		row := c.Location.Row
		text := strings.TrimPrefix(string(c.Text), " ")
		if row <= first || row > last || text == "" || strings.ContainsAny(text[:1], " \t#-") {
			continue
		}
		key, _, ok := strings.Cut(text, ":")
		if ok && !slices.Contains(metadataKeys, key) {
			m.bad(rangeOf(c.Location), source.Nearest(key, metadataKeys), "METADATA has no key %q", key)
		}
	}
}

// place finds the line of a key in the block; the block itself where it has none.
func (m *metadata) place(key string) source.Range {
	first, last := m.block.Location.Row, m.block.EndLoc().Row
	for _, c := range m.module.Comments {
		before, _, ok := strings.Cut(string(c.Text), ":")
		if row := c.Location.Row; ok && row > first && row <= last && strings.TrimSpace(before) == key {
			r := rangeOf(c.Location)
			indent := 1 + len(before) - len(strings.TrimLeft(before, " \t"))
			r.Start.Column += indent
			r.End = r.Start
			return r
		}
	}
	return rangeOf(m.block.Location)
}

func (m *metadata) text(key, v string, longest int) string {
	v = strings.TrimSpace(v)
	switch {
	case v == "":
		m.bad(m.place(key), "", "METADATA: %s is owed", key)
	case len(v) > longest:
		m.bad(m.place(key), "", "METADATA: %s is longer than %d bytes", key, longest)
	case key == "title" && strings.ContainsAny(v, "\r\n"):
		m.bad(m.place(key), "", "METADATA: title is one line")
	case unshowable(v, "\n\t") != "":
		m.bad(m.place(key), "", "METADATA: %s holds %s", key, unshowable(v, "\n\t"))
	}
	return v
}

func (m *metadata) customText(custom map[string]any, key string) string {
	v, ok := custom[key]
	if !ok {
		m.bad(rangeOf(m.block.Location), "", "METADATA: custom.%s is owed", key)
		return ""
	}
	s, ok := v.(string)
	if !ok {
		m.bad(m.place(key), "", "METADATA: %s is a text, not %v", key, v)
		return ""
	}
	return m.text(key, s, longestText)
}

func (m *metadata) oneOf(custom map[string]any, key string, words []string) string {
	s := m.customText(custom, key)
	if s != "" && !slices.Contains(words, s) {
		m.bad(m.place(key), source.Nearest(s, words), "METADATA: %s is one of %s, not %q", key, strings.Join(words, ", "), s)
		return ""
	}
	return s
}

func (m *metadata) cites(custom map[string]any, book *codebook.Codebook) []string {
	v, ok := custom["cites"]
	if !ok {
		return nil
	}
	list, ok := v.([]any)
	if !ok {
		m.bad(m.place("cites"), "", "METADATA: cites is a list of the codebook's sources, not %v", v)
		return nil
	}
	var keys, cites []string
	for i := range book.Sources {
		keys = append(keys, book.Sources[i].Key)
	}
	for _, c := range list {
		s, _ := c.(string)
		if !slices.Contains(keys, s) {
			m.bad(m.place("cites"), source.Nearest(s, keys), "METADATA: cites: the codebook has no source %q", fmt.Sprint(c))
			continue
		}
		cites = append(cites, s)
	}
	return cites
}

// rangeOf turns the engine's location into ours: lines end with LF, columns
// count code points from 1.
func rangeOf(l *ast.Location) source.Range {
	if l == nil {
		return source.Range{}
	}
	p := source.Position{Line: l.Row, Column: l.Col, Byte: l.Offset}
	return source.Range{File: l.File, Start: p, End: p}
}
