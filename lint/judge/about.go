package judge

import (
	"io/fs"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
	"stringline/schema/codebook"
)

// About is what a codebook's folder says about one of its rules: for pages that
// explain it.
type About struct {
	Rule       Rule
	Parameters []*codebook.Parameter // that it reads, in the codebook's order
	Tables     []TableAbout          // that it looks up, by name
	Attributes []*codebook.Attribute // of the book's own that it reads
	Cites      []codebook.Source
	Text       string // its Rego, without METADATA
}

// TableAbout is what a table says about itself.
type TableAbout struct {
	Name, Title, Source, Status, Unit string
	Axes                              []string // "size (mm2, down_to)"
	Rows                              int
}

// About explains one rule by its id; false where the codebook has none of it.
func (b *Book) About(id string) (About, bool) {
	name, ok := strings.CutPrefix(id, b.Name()+".")
	rule := b.rule(name)
	if !ok || rule == nil {
		return About{}, false
	}
	a := About{Rule: *rule}
	used := b.reads(name)
	for i := range b.codebook.Parameters {
		if p := &b.codebook.Parameters[i]; used.params[p.Name] {
			a.Parameters = append(a.Parameters, p)
		}
	}
	for i := range b.codebook.Attributes {
		if x := &b.codebook.Attributes[i]; used.declared[x.Name] {
			a.Attributes = append(a.Attributes, x)
		}
	}
	for _, t := range sortedKeys(used.tables) {
		if about, ok := b.Table(t); ok {
			a.Tables = append(a.Tables, about)
		}
	}
	for i := range b.codebook.Sources {
		if s := b.codebook.Sources[i]; slices.Contains(rule.Cites, s.Key) {
			a.Cites = append(a.Cites, s)
		}
	}
	text, err := fs.ReadFile(b.source.Files, name+"/rule.rego")
	if err == nil { // the folder may have gone since the book was loaded
		a.Text = withoutMetadata(string(text))
	}
	return a, true
}

// Tables lists the names of the codebook's tables in order.
func (b *Book) Tables() []string { return sortedKeys(b.tables) }

// Table tells about one table.
func (b *Book) Table(name string) (TableAbout, bool) {
	t := b.tables[name]
	if t == nil {
		return TableAbout{}, false
	}
	about := TableAbout{Name: t.name, Title: t.title, Source: t.source, Status: t.status, Unit: columnWords(t.kind, t.unit.Symbol), Rows: len(t.rows)}
	for _, x := range t.axes {
		about.Axes = append(about.Axes, x.name+" ("+strings.TrimPrefix(columnWords(x.kind, x.unit.Symbol)+", "+strings.ReplaceAll(x.match, "_", " "), ", ")+")")
	}
	return about, true
}

func columnWords(k kind, symbol string) string {
	switch k {
	case word:
		return "word"
	case yesNo:
		return "yes or no"
	}
	return symbol
}

// withoutMetadata drops the comment block above a rule's package: a page shows
// what it says in other ways.
func withoutMetadata(text string) string {
	lines := strings.Split(text, "\n")
	for i, line := range lines {
		if strings.HasPrefix(line, "package ") {
			return strings.TrimSpace(strings.Join(lines[i:], "\n")) + "\n"
		}
	}
	return text
}

// readNames are those that a rule reads by itself or through functions of shared/,
// and those functions.
type readNames struct{ params, declared, tables, shared map[string]bool }

func noNames() readNames {
	return readNames{map[string]bool{}, map[string]bool{}, map[string]bool{}, map[string]bool{}}
}

// reads walks a rule and the functions of shared/ that it reaches.
func (b *Book) reads(rule string) readNames {
	used := noNames()
	var shared []*ast.Rule
	for _, file := range b.sharedFiles() {
		if m, err := b.parseFile(file, false); err == nil {
			shared = append(shared, m.Rules...)
		}
	}
	m, err := b.parseFile(rule+"/rule.rego", false)
	if err != nil {
		return used
	}
	walked := map[*ast.Rule]bool{}
	var walk func(node any)
	walk = func(node any) {
		ast.WalkRefs(node, func(r ast.Ref) bool {
			used.note(r)
			for _, s := range shared {
				name := s.Head.Name.String()
				if !walked[s] && (r.String() == name || slices.Contains(callNames(b.Name(), name, true), r.String())) {
					walked[s], used.shared[name] = true, true
					walk(s)
				}
			}
			return false
		})
		ast.WalkTerms(node, func(t *ast.Term) bool {
			// A table's name may be handed to a function that looks it up.
			if s, ok := t.Value.(ast.String); ok && b.tables[string(s)] != nil {
				used.tables[string(s)] = true
			}
			return false
		})
	}
	walk(m)
	return used
}

// note takes a path into account. A function may be handed input.params or a
// subject's answers as a whole: then a name of theirs stands right behind its own.
func (u *readNames) note(r ast.Ref) {
	names, _ := pathNames(r)
	for i := range names {
		switch {
		case i > 0 && names[i-1] == "params":
			u.params[names[i]] = true
		case i > 0 && names[i-1] == "declared":
			u.declared[names[i]] = true
		case i == 0 && !r[0].Equal(ast.InputRootDocument) && !factSomewhere(names[0]):
			u.params[names[0]], u.declared[names[0]] = true, true
		}
	}
}

// factSomewhere tells whether a subject of any kind has a fact of that name.
func factSomewhere(name string) bool {
	return slices.ContainsFunc(facts.Collections(), func(c *facts.Collection) bool {
		_, ok := c.Entry(name)
		return ok
	})
}

// unused lists what the codebook declares and no rule reads: a parameter that a
// workshop would set without effect, an attribute that designs would answer for
// nothing, a table that judges nothing.
func (t *bookTest) unused() {
	b := t.book
	all := noNames()
	for _, name := range b.names {
		used := b.reads(name)
		maps.Copy(all.params, used.params)
		maps.Copy(all.declared, used.declared)
		maps.Copy(all.tables, used.tables)
	}
	before := len(t.report.Results)
	for i := range b.codebook.Parameters {
		if p := &b.codebook.Parameters[i]; !all.params[p.Name] {
			t.fail("", "codebook.hcl", p.At, "no rule reads the parameter %q", p.Name)
		}
	}
	for i := range b.codebook.Attributes {
		if a := &b.codebook.Attributes[i]; !all.declared[a.Name] {
			t.fail("", "codebook.hcl", a.At, "no rule reads the attribute %q that designs are asked for", a.Name)
		}
	}
	for _, name := range sortedKeys(b.tables) {
		if !all.tables[name] {
			t.fail("", "data/"+name+".json", atLine(b.source.show("data/"+name+".json"), 1), "no rule looks up the table %q", name)
		}
	}
	if len(t.report.Results) == before {
		t.pass("", "codebook.hcl", atLine(b.source.show("codebook.hcl"), 1))
	}
}
