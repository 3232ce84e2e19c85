package judge

import (
	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
)

// bindings finds out what the variables of each definition stand for, as far as
// it is written down: `some s in input.strings`, `some p in s.protections`,
// `c := s.array.charger`, and a function's operands from its calls.
func bindings(m *ast.Module) map[*ast.Rule]map[string]*facts.Collection {
	all := map[*ast.Rule]map[string]*facts.Collection{}
	var rules []*ast.Rule
	functions := map[string][]*ast.Rule{}
	for _, r := range m.Rules {
		for ; r != nil; r = r.Else {
			rules = append(rules, r)
			if len(r.Head.Args) > 0 {
				functions[r.Head.Name.String()] = append(functions[r.Head.Name.String()], r)
			}
			all[r] = map[string]*facts.Collection{}
		}
	}
	for changed := true; changed; {
		changed = false
		for _, r := range rules {
			b := binder{of: all[r], all: all, functions: functions}
			b.rule(r)
			changed = changed || b.changed
		}
	}
	return all
}

// binder looks at one definition. Each binding is made once and stays, so that
// it comes to an end.
type binder struct {
	of        map[string]*facts.Collection
	all       map[*ast.Rule]map[string]*facts.Collection
	functions map[string][]*ast.Rule // by name
	changed   bool
}

func (b *binder) bind(of map[string]*facts.Collection, t *ast.Term, c *facts.Collection) {
	if v, ok := t.Value.(ast.Var); ok && c != nil && of[string(v)] == nil {
		of[string(v)] = c
		b.changed = true
	}
}

func (b *binder) rule(r *ast.Rule) {
	ast.WalkNodes(branch(r), func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.Expr:
			b.expr(n)
		case *ast.Term:
			if c, ok := n.Value.(ast.Call); ok {
				b.call(c[0].String(), c[1:])
			}
		}
		return false
	})
}

func (b *binder) expr(e *ast.Expr) {
	switch t := e.Terms.(type) {
	case *ast.SomeDecl:
		if c, ok := t.Symbols[0].Value.(ast.Call); ok && len(c) > 2 {
			b.bind(b.of, c[len(c)-2], b.members(c[len(c)-1])) // some k, v in list: v and the list stand last
		}
	case *ast.Every:
		b.bind(b.of, t.Value, b.members(t.Domain))
	case []*ast.Term:
		if e.IsAssignment() || e.IsEquality() {
			b.bind(b.of, t[1], b.subject(t[2]))
		} else if e.IsCall() {
			b.call(e.Operator().String(), t[1:])
		}
	}
}

// call hands what operands stand for to the function's own names for them.
func (b *binder) call(name string, operands []*ast.Term) {
	for _, r := range b.functions[name] {
		for i := range min(len(r.Head.Args), len(operands)) {
			b.bind(b.all[r], r.Head.Args[i], b.subject(operands[i]))
		}
	}
}

// members gives the collection that a list's members are of.
func (b *binder) members(t *ast.Term) *facts.Collection {
	c, many := b.path(t)
	if !many {
		return nil
	}
	return c
}

// subject gives the collection of one subject.
func (b *binder) subject(t *ast.Term) *facts.Collection {
	c, many := b.path(t)
	if many {
		return nil
	}
	return c
}

// path follows a path to a subject or to a list of subjects.
func (b *binder) path(t *ast.Term) (c *facts.Collection, many bool) {
	switch v := t.Value.(type) {
	case ast.Var:
		return b.of[string(v)], false
	case ast.Ref:
		names, ok := pathNames(v)
		if !ok || len(names) == 0 {
			return nil, false
		}
		if v[0].Equal(ast.InputRootDocument) {
			if c, ok = facts.CollectionOf(names[0]); !ok {
				return nil, false
			}
			names, many = names[1:], !c.Single
		} else if head, ok := v[0].Value.(ast.Var); ok {
			c = b.of[string(head)]
		}
		for _, name := range names {
			if c == nil || many {
				return nil, false
			}
			l, ok := c.Link(name)
			if !ok {
				return nil, false
			}
			c, _ = facts.CollectionOf(l.To)
			many = l.Many
		}
		return c, many
	}
	return nil, false
}
