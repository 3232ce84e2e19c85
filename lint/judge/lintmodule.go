package judge

import (
	"bytes"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/schema/source"
)

// lint walks all modules of a codebook, and finds out which rules read values.
func (l *loader) lint(b *Book, rules map[string]*ast.Module) {
	if l.src.Held {
		l.readers(b, rules)
		return
	}
	for _, m := range l.shared {
		l.problems = append(l.problems, b.lintModule(l.shared, m, "")...)
	}
	l.problems = append(l.problems, twice(l.shared)...)
	for name, m := range rules {
		l.problems = append(l.problems, b.lintModule(l.shared, m, name)...)
	}
	l.readers(b, rules)
}

// readers notes which rules read values, themselves or through shared/.
func (l *loader) readers(b *Book, rules map[string]*ast.Module) {
	if l.src.Held && !l.anywhere("fact.value") { // an author who hides the name is none of ours
		return
	}
	shared := rulesOf(l.shared)
	for name, m := range rules {
		if readsValues(m, valueReaders(b.codebook.Name, shared, m.Rules)) {
			b.byValue[name] = true
		}
	}
}

// anywhere tells whether a text stands in one of the modules' files.
func (l *loader) anywhere(text string) bool {
	for name := range l.parsed {
		if bytes.Contains(l.files[name], []byte(text)) {
			return true
		}
	}
	return false
}

func rulesOf(modules []*ast.Module) []*ast.Rule {
	var all []*ast.Rule
	for _, m := range modules {
		all = append(all, m.Rules...)
	}
	return all
}

// lintModule walks one module of a rule, or of shared/ where self is empty.
func (b *Book) lintModule(shared []*ast.Module, m *ast.Module, self string) source.Problems {
	all := rulesOf(shared)
	names := map[string]int{}
	for _, r := range all {
		names[r.Head.Name.String()] = len(r.Head.Args)
	}
	each := ""
	if rule := b.rule(self); rule != nil {
		each = rule.Each
	}
	check := linter{book: b.codebook.Name, declared: b.codebook, words: b.words, tables: b.tables, shared: names, module: m, self: self, each: each,
		makes: formulaMakers(b.words, b.codebook.Name, all, m.Rules)}
	return check.check()
}
