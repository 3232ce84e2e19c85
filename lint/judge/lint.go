package judge

import (
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
	"stringline/schema/codebook"
	"stringline/schema/source"
)

// linter walks a module's syntax tree for what the engine's compiler lets pass:
// names behind function parameters and `every`, references into other codebooks,
// facts used as if they were conditions, and the shape of a rule's package.
type linter struct {
	book     string
	words    *vocabulary
	tables   map[string]*table
	declared *codebook.Codebook
	shared   map[string]int  // the functions in shared/ with how many operands they take
	built    map[string]bool // keys of objects that the module makes itself
	makes    map[string]bool // names of functions whose result is a formula
	module   *ast.Module
	self     string // the rule's name; "" for shared/
	each     string // the collection that the rule judges; "" where that is not known
	test     bool
	bound    map[*ast.Rule]map[string]*facts.Collection // what variables stand for
	calls    map[*ast.Location]bool                     // where the names of called functions stand
	problems source.Problems
}

func (l *linter) bad(at *ast.Location, near, format string, args ...any) {
	l.problems = append(l.problems, source.Problem{Kind: "rule", Message: fmt.Sprintf(format, args...), Near: near, At: rangeOf(at)})
}

// check looks at one module of a rule or of shared/.
func (l *linter) check() source.Problems {
	l.shape()
	l.imports()
	l.built = builtKeys(l.module)
	l.bound = bindings(l.module)
	l.calls = map[*ast.Location]bool{}
	ast.WalkTerms(l.module, func(t *ast.Term) bool {
		if c, ok := t.Value.(ast.Call); ok {
			l.calls[operatorAt(c[0])] = true
			l.operands(c[0].String(), c[1:])
		}
		return false
	})
	ast.WalkExprs(l.module, func(e *ast.Expr) bool {
		if terms, ok := e.Terms.([]*ast.Term); ok && len(terms) > 0 {
			l.calls[operatorAt(terms[0])] = true
		}
		return false
	})
	ast.WalkRefs(l.module, func(r ast.Ref) bool {
		l.ref(r)
		return false
	})
	ast.WalkExprs(l.module, func(e *ast.Expr) bool {
		l.expr(e)
		return false
	})
	l.records()
	l.units()
	return l.problems
}

// operatorAt gives the place of a called function's name.
func operatorAt(t *ast.Term) *ast.Location {
	if r, ok := t.Value.(ast.Ref); ok && len(r) > 0 {
		return r[0].Location
	}
	return t.Location
}

// shape holds a rule's package to one partial set `check` and functions.
func (l *linter) shape() {
	checks := 0
	for _, r := range l.module.Rules {
		for rule := r; rule != nil; rule = rule.Else {
			head := rule.Head
			name := head.Ref()
			switch {
			case len(head.Args) > 0:
				if len(name) != 1 {
					l.bad(rule.Loc(), "", "a function's name is one word, not %v", name)
				}
			case l.self == "":
				l.bad(rule.Loc(), "", "shared/ holds functions alone; %v is none", name)
			case len(name) == 1 && name[0].Equal(ast.VarTerm("check")) && head.RuleKind() == ast.MultiValue:
				checks++
			case len(name) == 1 && name[0].Equal(ast.VarTerm("check")):
				l.bad(rule.Loc(), "", "check is a set: write `check contains {...} if ...`")
			default:
				l.bad(rule.Loc(), source.Nearest(name.String(), []string{"check"}), "a rule's package holds `check contains` and functions alone; %v is neither", name)
			}
			if rule.Default && len(head.Args) == 0 {
				l.bad(rule.Loc(), "", "a default would hide a rule that went undefined")
			}
		}
	}
	if checks == 0 && l.self != "" {
		l.bad(l.module.Package.Location, "", "the rule has no `check contains`")
	}
}

// imports allows the codebook's own shared functions and parts of input.
func (l *linter) imports() {
	for _, i := range l.module.Imports {
		path, ok := i.Path.Value.(ast.Ref)
		if !ok {
			continue
		}
		switch {
		case path.HasPrefix(ast.MustParseRef("rego.v1")), path[0].Equal(ast.InputRootDocument):
		case path.Equal(sharedRef(l.book)) && l.self != "" && (i.Alias == "" || i.Alias == "shared"):
		case l.test && path.Equal(ruleRef(l.book, l.self)):
		default:
			l.bad(i.Location, "", "a rule may import input and, by its own name, data.codebooks.%s.shared; not %v", l.book, path)
		}
	}
}

func sharedRef(book string) ast.Ref {
	return ast.Ref{ast.DefaultRootDocument, ast.StringTerm("codebooks"), ast.StringTerm(book), ast.StringTerm("shared")}
}

func ruleRef(book, rule string) ast.Ref {
	return ast.Ref{ast.DefaultRootDocument, ast.StringTerm("codebooks"), ast.StringTerm(book), ast.StringTerm(rule)}
}

// builtKeys are the keys of objects that a module writes out: paths into them
// are the module's own business.
func builtKeys(m *ast.Module) map[string]bool {
	keys := map[string]bool{}
	ast.WalkTerms(m, func(t *ast.Term) bool {
		switch v := t.Value.(type) {
		case ast.Object:
			v.Foreach(func(k, _ *ast.Term) {
				if s, ok := k.Value.(ast.String); ok {
					keys[string(s)] = true
				}
			})
		case *ast.ObjectComprehension:
			if s, ok := v.Key.Value.(ast.String); ok {
				keys[string(s)] = true
			}
		}
		return false
	})
	return keys
}

// ref checks the names along a path.
func (l *linter) ref(r ast.Ref) {
	if r[0].Equal(ast.DefaultRootDocument) {
		l.dataRef(r)
		return
	}
	head, ok := r[0].Value.(ast.Var)
	if !ok {
		return
	}
	if string(head) == "input" && len(r) == 1 {
		l.bad(r[0].Location, "", "input as a whole is not for rules: name a collection")
	}
	if string(head) == "shared" && len(r) > 1 && l.self != "" {
		l.sharedName(r[1])
		return
	}
	if l.calls[r[0].Location] { // whether there is such a function the compiler knows
		return
	}
	for _, step := range r[1:] {
		s, ok := step.Value.(ast.String)
		if !ok || l.words.has(string(s)) || l.built[string(s)] {
			continue
		}
		l.bad(step.Location, source.Nearest(string(s), l.words.names()), "there is no fact or link %q", string(s))
		l.problems[len(l.problems)-1].Found = string(s)
	}
}

func (l *linter) dataRef(r ast.Ref) {
	switch {
	case len(r) > 4 && r.HasPrefix(sharedRef(l.book)):
		l.sharedName(r[4])
	case l.imported(r):
	default:
		l.bad(r[0].Location, "", "a rule sees no data but the functions of data.codebooks.%s.shared; %v is not for it", l.book, r)
	}
}

// imported tells whether a path is that of an import or of the package, which
// have checks of their own.
func (l *linter) imported(r ast.Ref) bool {
	return l.module.Package.Path.Equal(r) || slices.ContainsFunc(l.module.Imports, func(i *ast.Import) bool { return i.Path.Value.Compare(r) == 0 })
}

func (l *linter) sharedName(t *ast.Term) {
	name, _ := t.Value.(ast.String)
	if _, ok := l.shared[string(name)]; !ok {
		l.bad(t.Location, source.Nearest(string(name), sortedKeys(l.shared)), "shared/ has no function %q", string(name))
	}
}

// expr checks one expression: `with`, and facts in places where only their
// values would make sense.
func (l *linter) expr(e *ast.Expr) {
	if len(e.With) > 0 && !l.test {
		l.bad(e.With[0].Location, "", "`with` is for tests alone")
	}
	if t, ok := e.Terms.(*ast.Term); ok {
		l.condition(t)
		return
	}
	if !e.IsCall() {
		return
	}
	name := e.Operator().String()
	l.operands(name, e.Operands())
	if len(e.Operands()) == l.arity(name) {
		l.called(name, e.Location)
	}
}

// operands checks what the walk knows better than the types: comparisons, which
// behind a function's parameter have none, and tables named outright.
func (l *linter) operands(name string, of []*ast.Term) {
	l.written(name, of)
	switch name {
	case "eq", "equal", "neq", "internal.member_2", "internal.member_3":
		for _, o := range of {
			l.compared(o)
		}
	case "fact.lookup", "fact.interpolate":
		if len(of) > 0 {
			l.tableName(of[0])
		}
	}
}

// arity is how many operands a call of a formula-making function has when its
// result is dropped; -1 for other functions.
func (l *linter) arity(name string) int {
	for i := range functions {
		if functions[i].name == name {
			return functions[i].decl.Arity()
		}
	}
	for _, r := range l.module.Rules {
		if len(r.Head.Args) > 0 && r.Head.Name.String() == name {
			return len(r.Head.Args)
		}
	}
	if n, ok := l.shared[name[strings.LastIndexByte(name, '.')+1:]]; ok {
		return n
	}
	return -1
}

// condition refuses a fact, or a call that makes a formula, standing alone as a
// condition: being an object it would always hold.
func (l *linter) condition(t *ast.Term) {
	switch v := t.Value.(type) {
	case ast.Var:
		l.bad(t.Location, "", "%v alone is no condition: what it stands for may be a fact, which always holds; compare it", v)
	case ast.Ref:
		if l.endsInFact(v) {
			l.bad(t.Location, "", "%v is a fact, not a condition: put it into `when` or into a fact.* function", v)
		}
	case ast.Call:
		l.called(v[0].String(), t.Location)
	}
}

// endsInFact tells whether a path's last name is that of a fact, and of nothing else.
func (l *linter) endsInFact(r ast.Ref) bool {
	last, ok := r[len(r)-1].Value.(ast.String)
	return ok && len(r) > 1 && l.words.leaves[string(last)] && !l.words.steps[string(last)] && !l.built[string(last)]
}

func (l *linter) called(name string, at *ast.Location) {
	if l.makes[name] || strings.HasPrefix(name, "fact.") && name != "fact.value" {
		l.bad(at, "", "%s gives a formula, not a condition: put it into `when`, `is` or `is_true`", name)
	}
}

// compared refuses ==, != and `in` on a fact, which would compare ids.
func (l *linter) compared(t *ast.Term) {
	switch v := t.Value.(type) {
	case ast.Ref:
		if l.endsInFact(v) {
			l.bad(t.Location, "", "%v is a fact: compare it with fact.one_of, fact.more_than or in the record", v)
		}
	case ast.Call:
		if name := v[0].String(); l.makes[name] || strings.HasPrefix(name, "fact.") && name != "fact.value" {
			l.bad(t.Location, "", "%s gives a formula, which cannot be compared here", name)
		}
	}
}

// tableName checks a table that is named outright.
func (l *linter) tableName(t *ast.Term) {
	s, ok := t.Value.(ast.String)
	if !ok {
		return
	}
	if _, ok := l.tables[string(s)]; !ok {
		l.bad(t.Location, source.Nearest(string(s), sortedKeys(l.tables)), "there is no table %q in data/", string(s))
	}
}
