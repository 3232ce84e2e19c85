package judge

import (
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// Units and kinds are checked when a rule is put to a design. Where it is plain
// already what each operand is (a fact of a known subject, a parameter, a number
// with its unit), the same checks are made when the rule is loaded.

// static builds the formulas that one definition writes out.
type static struct {
	*linter
	bound map[string]*facts.Collection
	told  map[source.Problem]bool
}

// units checks the formulas and the comparisons of every definition.
func (l *linter) units() {
	told := map[source.Problem]bool{}
	for _, r := range l.module.Rules {
		for ; r != nil; r = r.Else {
			s := &static{linter: l, bound: l.bound[r], told: told}
			ast.WalkTerms(branch(r), func(t *ast.Term) bool {
				switch v := t.Value.(type) {
				case ast.Call:
					s.formula(t)
				case ast.Object:
					if r.Head.Key == t {
						s.record(t, v)
					}
				}
				return false
			})
		}
	}
}

func (s *static) tell(f *fault) {
	p := source.Problem{Kind: "rule", Message: f.message, At: f.at}
	if !s.told[p] {
		s.told[p] = true
		s.problems = append(s.problems, p)
	}
}

// record compares the two sides of a record, and wants a yes or no where one is due.
func (s *static) record(t *ast.Term, o ast.Object) {
	value := func(key string) *ast.Term { return o.Get(ast.StringTerm(key)) }
	at := rangeOf(t.Location)
	is := s.formula(value("is"))
	for _, relation := range relations {
		limits := []*ast.Term{value(relation)}
		if limits[0] != nil && relation == "between" {
			limits = elements(limits[0])
		}
		for _, limit := range limits {
			if l := s.formula(limit); is != nil && l != nil {
				if why := unlikeSides(relation, is, l); why != "" {
					s.tell(faultAt(at, "%s", why))
				}
			}
		}
	}
	if equal := value("all_equal"); equal != nil {
		of := elements(equal)
		for i := 1; i < len(of); i++ {
			if a, b := s.formula(of[0]), s.formula(of[i]); a != nil && b != nil {
				if why := unlikeSides("all_equal", a, b); why != "" {
					s.tell(faultAt(at, "%s", why))
				}
			}
		}
	}
	for _, key := range []string{"is_true", "when"} {
		if f := s.formula(value(key)); f != nil && f.kind != yesNo {
			s.tell(faultAt(at, "%s takes a yes/no, not %s", key, f.describe()))
		}
	}
}

func elements(t *ast.Term) []*ast.Term {
	var of []*ast.Term
	if a, ok := t.Value.(*ast.Array); ok {
		for i := range a.Len() {
			of = append(of, a.Elem(i))
		}
	}
	return of
}

// formula builds what a term stands for; nil where that is not plain, or where it
// is wrong, which is told.
func (s *static) formula(t *ast.Term) *formula {
	if t == nil {
		return nil
	}
	at := rangeOf(t.Location)
	switch v := t.Value.(type) {
	case ast.Number:
		f, _ := plainNumber(v, bare, at)
		return f
	case ast.Boolean:
		return &formula{op: "yes_no", kind: yesNo, yes: bool(v), at: at}
	case ast.Ref:
		return s.leaf(v, at)
	case ast.Call:
		name, ok := strings.CutPrefix(v[0].String(), "fact.")
		if !ok {
			return nil
		}
		f, wrong := s.call(name, v[1:], at)
		if wrong != nil {
			s.tell(wrong)
		}
		return f
	}
	return nil
}

// all builds several operands; false where one of them is not plain.
func (s *static) all(of []*ast.Term) ([]*formula, bool) {
	var made []*formula
	for _, t := range of {
		f := s.formula(t)
		if f == nil {
			return nil, false
		}
		made = append(made, f)
	}
	return made, len(made) > 0
}

func (s *static) call(name string, of []*ast.Term, at source.Range) (*formula, *fault) {
	switch {
	case name == "number" && len(of) == 2:
		n, isNumber := of[0].Value.(ast.Number)
		symbol, isText := textOf(of[1])
		unit, known := quantity.Lookup(symbol)
		if !isNumber || !isText || !known {
			return nil, nil
		}
		return plainNumber(n, unit, at)
	case len(of) == 1 && (name == "times" || name == "plus" || name == "largest" || name == "smallest" || name == "all" || name == "any"):
		if operands, ok := s.all(elements(of[0])); ok {
			return combine(name, operands, at)
		}
	case name == "no" && len(of) == 1, name == "either" && len(of) == 3,
		len(of) == 2 && (name == "minus" || name == "ratio" || name == "more_than" || name == "at_least"):
		if operands, ok := s.all(of); ok {
			return combine(name, operands, at)
		}
	case name == "one_of" && len(of) == 2:
		return s.oneOf(of[0], of[1], at)
	case len(of) == 2 && (name == "lookup" || name == "interpolate"):
		table, _ := textOf(of[0])
		t := s.tables[table]
		if operands, ok := s.all(elements(of[1])); ok && t != nil && len(operands) == len(t.axes) {
			return look(name, t, operands, at)
		}
	}
	return nil, nil
}

func (s *static) oneOf(fact, among *ast.Term, at source.Range) (*formula, *fault) {
	f := s.formula(fact)
	of := elements(among)
	if f == nil || len(of) == 0 {
		return nil, nil
	}
	var choices []constant
	for _, t := range of {
		switch v := t.Value.(type) {
		case ast.String:
			choices = append(choices, constant{word: string(v), isWord: true})
		case ast.Number:
			n, wrong := plainNumber(v, bare, at)
			if wrong != nil {
				return nil, wrong
			}
			choices = append(choices, constant{number: n.number})
		default:
			return nil, nil
		}
	}
	return choose(f, nil, choices, at)
}

// leaf gives the fact or the parameter that a path ends in.
func (s *static) leaf(r ast.Ref, at source.Range) *formula {
	names, ok := pathNames(r)
	if !ok || len(names) == 0 {
		return nil
	}
	if r[0].Equal(ast.InputRootDocument) && names[0] == "params" && len(names) == 2 {
		if p, ok := s.declared.Parameter(names[1]); ok {
			unit := p.Unit
			if p.Kind != "quantity" {
				unit = p.Kind
			}
			return plainLeaf(r, parameterKind(p.Kind), unit, at)
		}
		return nil
	}
	e := entryAt(r, names, s.bound)
	if e == nil || !visible(e) || len(e.Units) > 0 { // what a reading measures is known from the design alone
		return nil
	}
	return plainLeaf(r, kindOf(e.Kind), e.Unit, at)
}

func plainLeaf(r ast.Ref, k kind, unit string, at source.Range) *formula {
	f := &formula{op: "leaf", kind: k, id: r.String(), at: at}
	if k == number || k == list {
		u, ok := quantity.Lookup(unit)
		if !ok {
			return nil
		}
		f.unit = u
	}
	return f
}

// entryAt finds the declaration of the fact that a path ends in, by what its
// variable stands for.
func entryAt(r ast.Ref, names []string, bound map[string]*facts.Collection) *facts.Entry {
	var c *facts.Collection
	if r[0].Equal(ast.InputRootDocument) {
		var ok bool
		if c, ok = facts.CollectionOf(names[0]); !ok || !c.Single {
			return nil
		}
		names = names[1:]
	} else if head, ok := r[0].Value.(ast.Var); ok {
		c = bound[string(head)]
	}
	if c == nil {
		return nil
	}
	s := siblings{}
	last, at := s.walk(c, names)
	if last == nil {
		return nil
	}
	e, _ := last.Entry(strings.Join(names[at:], "."))
	return e
}
