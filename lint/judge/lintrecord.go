package judge

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// What is written out in a rule is checked when it is loaded, before any design:
// the keys of its records, whom they are about, the words that facts are compared
// with, units, and the operands of tables. What is only made while a rule runs is
// checked then, and makes it void.

// records checks the records that `check contains` writes out.
func (l *linter) records() {
	if l.self == "" {
		return
	}
	for _, r := range l.module.Rules {
		if r.Head.Key == nil || len(r.Head.Args) > 0 {
			continue
		}
		switch v := r.Head.Key.Value.(type) {
		case ast.Object:
			l.record(r.Head.Key, v, l.bound[r])
		case ast.String, ast.Number, ast.Boolean, ast.Null, *ast.Array, ast.Set:
			l.bad(r.Head.Key.Location, "", "a record is an object, not %s", termKind(r.Head.Key))
		}
	}
}

// record checks one record that is written out with all its keys.
func (l *linter) record(t *ast.Term, o ast.Object, bound map[string]*facts.Collection) {
	keys := map[string]*ast.Term{}
	whole := true
	o.Foreach(func(k, v *ast.Term) {
		s, isText := k.Value.(ast.String)
		switch {
		case !isText: // a key that is worked out
			_, isVar := k.Value.(ast.Var)
			_, isRef := k.Value.(ast.Ref)
			whole = false
			if !isVar && !isRef {
				l.bad(k.Location, "", "a record has no key %s", keyText(k))
			}
		case !slices.Contains(recordKeys, string(s)):
			whole = false
			l.bad(k.Location, source.Nearest(string(s), recordKeys), "a record has no key %q", string(s))
		default:
			keys[string(s)] = v
		}
	})
	if !whole {
		return
	}
	for _, why := range wrongKeys(keys) {
		l.bad(t.Location, "", "%s", why)
	}
	for _, key := range []string{"say", "remedy"} {
		if s, ok := textOf(keys[key]); ok && unfilled(s) {
			l.bad(keys[key].Location, "", "%s: only {is}, {limit} and {about} are filled in", key)
		}
	}
	for _, key := range []string{"about", "which", "because", "otherwise", "does_not_apply", "say", "remedy"} {
		if v := keys[key]; v != nil {
			l.wording(key, v)
		}
	}
	if between := keys["between"]; between != nil {
		if a, ok := between.Value.(*ast.Array); ok && a.Len() != 2 {
			l.bad(between.Location, "", "between takes two limits, not %d", a.Len())
		}
	}
	l.about(keys["about"], bound)
}

// wording refuses what is plainly no text where one is due.
func (l *linter) wording(key string, v *ast.Term) {
	switch v.Value.(type) {
	case ast.Number, ast.Boolean, ast.Null, *ast.Array, ast.Set, ast.Object:
		l.bad(v.Location, "", "%s is a text, not %s", key, termKind(v))
	case ast.String:
		if v.Value.(ast.String) == "" {
			l.bad(v.Location, "", "%s is empty", key)
		}
	case ast.Ref:
		if l.endsInFact(v.Value.(ast.Ref)) {
			l.bad(v.Location, "", "%s is a text, not the fact %v", key, v)
		}
	}
}

// about holds the subject of a record to the rule's `each`, where it is plain
// what the variable stands for.
func (l *linter) about(t *ast.Term, bound map[string]*facts.Collection) {
	if t == nil || l.each == "" {
		return
	}
	r, ok := t.Value.(ast.Ref)
	if !ok {
		return
	}
	names, ok := pathNames(r)
	if !ok || len(names) == 0 || names[len(names)-1] != "id" {
		return
	}
	b := binder{of: bound}
	c, many := b.path(ast.NewTerm(r[:len(r)-1]))
	if head, isVar := r[0].Value.(ast.Var); isVar && len(r) == 2 {
		c = bound[string(head)]
	}
	if c != nil && !many && c.Name != l.each {
		l.bad(t.Location, "", "the record is about one of %s, and METADATA says each: %s", c.Name, l.each)
	}
}

// wrongKeys says what does not fit together in a record's keys.
func wrongKeys(keys map[string]*ast.Term) []string {
	var wrong []string
	if keys["about"] == nil {
		wrong = append(wrong, "a record names the subject that it is about")
	}
	are := func(of []string) (there []string) {
		for _, k := range of {
			if keys[k] != nil {
				there = append(there, k)
			}
		}
		return there
	}
	heads, given := are(heads), are(relations)
	switch {
	case len(heads) != 1:
		return append(wrong, "a record has one of is, all_equal, is_true, does_not_apply; this one has "+orNone(heads))
	case heads[0] == "is" && len(given) != 1:
		wrong = append(wrong, "a record with is has one of "+strings.Join(relations, ", ")+"; this one has "+orNone(given))
	case heads[0] != "is" && len(given) > 0:
		wrong = append(wrong, strings.Join(given, ", ")+" does not go with "+heads[0])
	}
	switch {
	case heads[0] == "is_true" && keys["because"] == nil:
		wrong = append(wrong, "is_true needs because: the words to show where it is not")
	case heads[0] != "is_true" && heads[0] != "all_equal" && keys["because"] != nil:
		wrong = append(wrong, "because goes with is_true and all_equal; with "+heads[0]+" the numbers speak")
	}
	switch {
	case heads[0] == "does_not_apply" && (keys["when"] != nil || keys["otherwise"] != nil):
		wrong = append(wrong, "does_not_apply stands by itself, without when")
	case keys["when"] == nil && keys["otherwise"] != nil:
		wrong = append(wrong, "otherwise goes with when")
	}
	return wrong
}

func orNone(words []string) string {
	if len(words) == 0 {
		return "none"
	}
	return strings.Join(words, " and ")
}

func textOf(t *ast.Term) (string, bool) {
	if t == nil {
		return "", false
	}
	s, ok := t.Value.(ast.String)
	return string(s), ok
}

// unfilled tells whether a text has braces that nothing fills in.
func unfilled(s string) bool {
	for {
		_, after, ok := strings.Cut(s, "{")
		if !ok {
			return false
		}
		name, after, ok := strings.Cut(after, "}")
		if !ok || !slices.Contains([]string{"is", "limit", "about"}, name) {
			return true
		}
		s = after
	}
}

// written checks the operands of a call that are written out.
func (l *linter) written(name string, of []*ast.Term) {
	switch {
	case name == "fact.number" && len(of) > 1:
		if s, ok := textOf(of[1]); ok {
			if _, known := quantity.Lookup(s); !known {
				l.bad(of[1].Location, source.Nearest(s, unitSymbols()), "fact.number: %s is not a unit", quote(s))
			}
		}
	case (name == "fact.lookup" || name == "fact.interpolate") && len(of) > 1:
		l.axes(name, of[0], of[1])
	case name == "fact.one_of" && len(of) > 1:
		l.choices(of[0], of[1])
	}
}

// axes holds the operands of a table to its axes.
func (l *linter) axes(name string, table, operands *ast.Term) {
	s, ok := textOf(table)
	a, isList := operands.Value.(*ast.Array)
	t := l.tables[s]
	if !ok || !isList || t == nil || a.Len() == len(t.axes) {
		return
	}
	var axes []string
	for _, x := range t.axes {
		axes = append(axes, x.name)
	}
	l.bad(operands.Location, "", "%s: table %q has the axes %s; here stand %d operands", name, s, strings.Join(axes, ", "), a.Len())
}

// choices holds the words that a fact is compared with to those that it can be:
// with a misspelt one it would never be.
func (l *linter) choices(fact, list *ast.Term) {
	r, isRef := fact.Value.(ast.Ref)
	a, isList := list.Value.(*ast.Array)
	if !isRef || !isList || !l.endsInFact(r) {
		return
	}
	known := l.words.words[string(r[len(r)-1].Value.(ast.String))]
	if e := l.entry(r); e != nil {
		known = e.Words()
	}
	if len(known) == 0 {
		return
	}
	for i := range a.Len() {
		if s, ok := textOf(a.Elem(i)); ok && !slices.Contains(known, s) {
			l.bad(a.Elem(i).Location, source.Nearest(s, known), "%v is never %q: it is one of %s", r, s, strings.Join(known, ", "))
		}
	}
}

// entry finds the declaration of the fact that a path ends in, where its variable
// stands for the same in every definition of the module.
func (l *linter) entry(r ast.Ref) *facts.Entry {
	names, ok := pathNames(r)
	if !ok || len(names) == 0 {
		return nil
	}
	head, _ := r[0].Value.(ast.Var)
	all := map[string]*facts.Collection{}
	for _, of := range l.bound {
		switch c, had := of[string(head)], all[string(head)]; {
		case c == nil:
		case had != nil && had != c:
			return nil
		default:
			all[string(head)] = c
		}
	}
	return entryAt(r, names, all)
}

func unitSymbols() []string {
	var all []string
	for _, u := range quantity.Units() {
		all = append(all, u.Symbol)
	}
	return all
}

// note takes down what a fact of a name can be. A name under which anything can
// stand somewhere has no words.
func (v *vocabulary) note(name string, isWord bool, words []string) {
	if v.words == nil {
		v.words = map[string][]string{}
	}
	had, seen := v.words[name]
	if !isWord || len(words) == 0 || seen && len(had) == 0 {
		v.words[name] = nil
		return
	}
	for _, w := range words {
		if !slices.Contains(had, w) {
			had = append(had, w)
		}
	}
	v.words[name] = had
}

// twice finds functions that two files of shared/ define: only one of them would
// be meant, and where they differ the rule that calls it is void.
func twice(shared []*ast.Module) source.Problems {
	first := map[string]*ast.Module{}
	var problems source.Problems
	for _, m := range shared {
		told := map[string]bool{}
		for _, r := range m.Rules {
			name := r.Head.Name.String()
			if first[name] == nil {
				first[name] = m
			}
			if first[name] != m && !told[name] {
				told[name] = true
				problems = append(problems, source.Problem{Kind: "rule", At: rangeOf(r.Loc()),
					Message: "function " + quote(name) + " is defined in " + first[name].Package.Location.File + " too: one name, one file"})
			}
		}
	}
	return problems
}
