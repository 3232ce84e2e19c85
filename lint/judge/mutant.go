package judge

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
)

// change is one small mistake that can be put into a module: a mutant in the
// making. Its name says what is done to which words of the rule, so that it
// stays the same when lines move: "s.voc_cold to s.voc_stc".
type change struct {
	name string
	in   string // the definition that it is in: "check", or a function
	at   *ast.Location
	do   func() // changes the module that was walked
}

// step is how far a constant is moved.
const step = 1.01

// changes lists what can be changed in a module, in the order of its text, each
// name once: a second one of the same name carries " #2". The operators are:
//
//	at_most to at_least            and the other way round, in a record
//	is and at_most exchanged       likewise at_least, between's two limits, and the sides of fact.more_than and fact.at_least
//	1.25 x 1.01, 1.25 / 1.01       each constant but 0
//	without when                   and its otherwise
//	without count(s.x) == 0        each expression of a body
//	without factor 1.25            each operand of a list of two or more that fact.times and its like take
//	s.voc_cold to s.voc_stc        a fact for another of the same unit in its collection, named most alike
func changes(m *ast.Module, siblings *siblings) []change {
	w := &changer{siblings: siblings, known: bindings(m)}
	for _, r := range m.Rules {
		for ; r != nil; r = r.Else {
			w.rule(r)
		}
	}
	slices.SortStableFunc(w.found, func(a, b change) int {
		if a.at.Row != b.at.Row {
			return a.at.Row - b.at.Row
		}
		return a.at.Col - b.at.Col
	})
	times := map[string]int{}
	for i := range w.found {
		name := w.found[i].name
		if times[name]++; times[name] > 1 {
			w.found[i].name = fmt.Sprintf("%s #%d", name, times[name])
		}
	}
	return w.found
}

// changer walks a module for what can be changed.
type changer struct {
	siblings *siblings
	known    map[*ast.Rule]map[string]*facts.Collection // what variables stand for
	of       map[string]*facts.Collection               // in the rule that is walked
	in       string                                     // the name of that rule
	scope    map[string][]ast.Ref                       // paths by the variable that they begin with, of one rule
	found    []change
}

func (w *changer) add(at *ast.Location, do func(), format string, args ...any) {
	if at == nil {
		at = &ast.Location{}
	}
	w.found = append(w.found, change{name: fmt.Sprintf(format, args...), in: w.in, at: at, do: do})
}

func (w *changer) rule(r *ast.Rule) {
	w.scope, w.of, w.in = map[string][]ast.Ref{}, w.known[r], r.Head.Name.String()
	ast.WalkRefs(branch(r), func(ref ast.Ref) bool {
		if v, ok := ref[0].Value.(ast.Var); ok {
			w.scope[string(v)] = append(w.scope[string(v)], ref)
		}
		return false
	})
	ast.WalkNodes(branch(r), func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.Rule:
			w.body(&n.Body)
		case *ast.Term:
			return w.term(n)
		case *ast.Expr:
			w.expr(n)
		}
		return false
	})
}

// branch is a rule without its else, which is walked by itself. The rest is shared.
func branch(r *ast.Rule) *ast.Rule {
	if r.Else == nil {
		return r
	}
	alone := *r
	alone.Else = nil
	return &alone
}

// expr looks at a call that is an expression by itself, and at every.
func (w *changer) expr(e *ast.Expr) {
	switch t := e.Terms.(type) {
	case *ast.Every:
		w.body(&t.Body)
	case []*ast.Term:
		if e.IsCall() {
			w.call(e.Operator().String(), t[1:], e.Location)
		}
	}
}

// term looks at one term; true where nothing within it is to be changed.
func (w *changer) term(t *ast.Term) bool {
	switch v := t.Value.(type) {
	case ast.Object:
		if v.Get(ast.InternedTerm("about")) != nil {
			w.record(t, v)
		}
	case ast.Number:
		w.constant(t, v)
	case ast.Call:
		w.call(v[0].String(), v[1:], t.Location)
	case ast.Ref:
		w.fact(t, v)
		return true // what stands in brackets within a path finds members, and is no figure of the rule
	case *ast.ArrayComprehension:
		w.body(&v.Body)
	case *ast.SetComprehension:
		w.body(&v.Body)
	case *ast.ObjectComprehension:
		w.body(&v.Body)
	}
	return false
}

// record changes what a record compares.
func (w *changer) record(t *ast.Term, o ast.Object) {
	change := func(edit func(key string, value *ast.Term) (string, *ast.Term, bool)) func() {
		return func() {
			var pairs [][2]*ast.Term
			o.Foreach(func(k, v *ast.Term) {
				key, value, keep := edit(string(k.Value.(ast.String)), v)
				if keep {
					pairs = append(pairs, [2]*ast.Term{ast.StringTerm(key), value})
				}
			})
			t.Value = ast.NewObject(pairs...)
		}
	}
	plain := true
	o.Foreach(func(k, _ *ast.Term) {
		_, isText := k.Value.(ast.String)
		plain = plain && isText
	})
	if !plain {
		return
	}
	value := func(key string) *ast.Term { return o.Get(ast.StringTerm(key)) }
	for _, pair := range [][2]string{{"at_most", "at_least"}, {"at_least", "at_most"}} {
		if v := value(pair[0]); v != nil {
			w.add(v.Location, change(func(key string, value *ast.Term) (string, *ast.Term, bool) {
				if key == pair[0] {
					key = pair[1]
				}
				return key, value, true
			}), "%s to %s", pair[0], pair[1])
		}
	}
	is := value("is")
	for _, relation := range []string{"at_most", "at_least"} {
		if limit := value(relation); is != nil && limit != nil {
			w.add(is.Location, change(func(key string, value *ast.Term) (string, *ast.Term, bool) {
				switch key {
				case "is":
					value = limit
				case relation:
					value = is
				}
				return key, value, true
			}), "is and %s exchanged", relation)
		}
	}
	if between := value("between"); is != nil && between != nil {
		w.between(change, is, between)
	}
	if when := value("when"); when != nil {
		w.add(when.Location, change(func(key string, value *ast.Term) (string, *ast.Term, bool) {
			return key, value, key != "when" && key != "otherwise"
		}), "without when")
	}
}

func (w *changer) between(change func(func(string, *ast.Term) (string, *ast.Term, bool)) func(), is, between *ast.Term) {
	limits, ok := between.Value.(*ast.Array)
	if !ok || limits.Len() != 2 {
		return
	}
	for i, which := range []string{"lower", "upper"} {
		both := []*ast.Term{limits.Elem(0), limits.Elem(1)}
		both[i] = is
		w.add(is.Location, change(func(key string, value *ast.Term) (string, *ast.Term, bool) {
			switch key {
			case "is":
				value = limits.Elem(i)
			case "between":
				value = ast.ArrayTerm(both...)
			}
			return key, value, true
		}), "is and %s limit exchanged", which)
	}
}

// constant moves a plain number to both sides.
func (w *changer) constant(t *ast.Term, n ast.Number) {
	x, err := strconv.ParseFloat(string(n), 64)
	if err != nil || x == 0 {
		return
	}
	set := func(x float64) func() {
		return func() { t.Value = ast.Number(strconv.FormatFloat(x, 'g', 12, 64)) }
	}
	w.add(t.Location, set(x*step), "%s x %v", n, step)
	w.add(t.Location, set(x/step), "%s / %v", n, step)
}

// listed are the functions that take a list of operands.
var listed = []string{"fact.times", "fact.plus", "fact.largest", "fact.smallest", "fact.all", "fact.any"}

func (w *changer) call(name string, operands []*ast.Term, at *ast.Location) {
	switch {
	case slices.Contains(listed, name) && len(operands) > 0:
		of, ok := operands[0].Value.(*ast.Array)
		if !ok || of.Len() < 2 {
			return
		}
		for i := range of.Len() {
			factor := of.Elem(i)
			w.add(factor.Location, func() {
				var rest []*ast.Term
				for j := range of.Len() {
					if j != i {
						rest = append(rest, of.Elem(j))
					}
				}
				operands[0].Value = ast.NewArray(rest...)
			}, "without factor %s", shown(factor.Location, factor))
		}
	case (name == "fact.more_than" || name == "fact.at_least") && len(operands) > 1:
		w.add(at, func() {
			operands[0].Value, operands[1].Value = operands[1].Value, operands[0].Value
		}, "sides of %s exchanged", name)
	}
}

// body drops each expression. One that only declares a variable changes nothing.
func (w *changer) body(b *ast.Body) {
	was := *b
	for i, e := range was {
		if t, ok := e.Terms.(*ast.Term); ok && len(was) == 1 && t.Equal(ast.BooleanTerm(true)) {
			continue // what stands for "no body"
		}
		if d, ok := e.Terms.(*ast.SomeDecl); ok {
			if _, in := d.Symbols[0].Value.(ast.Call); !in {
				continue
			}
		}
		w.add(e.Location, func() {
			rest := ast.Body{}
			for j := range was {
				if j != i {
					rest.Append(was[j])
				}
			}
			if len(rest) == 0 {
				rest.Append(ast.NewExpr(ast.BooleanTerm(true)))
			}
			*b = rest
		}, "without %s", shown(e.Location, e))
	}
}

// fact takes another fact of the same unit.
func (w *changer) fact(t *ast.Term, r ast.Ref) {
	v, ok := r[0].Value.(ast.Var)
	if !ok || len(r) < 2 {
		return
	}
	other := w.siblings.of(r, w.of[string(v)], w.scope[string(v)])
	if other == nil {
		return
	}
	w.add(t.Location, func() { t.Value = other }, "%s to %s", r, other)
}

// longestShown bounds the words of a rule in a mutant's name.
const longestShown = 100

// shown gives a piece of a rule in one line, as it is written there where the
// engine has kept its text.
func shown(at *ast.Location, of fmt.Stringer) string {
	text := of.String()
	if at != nil && len(at.Text) > 0 {
		text = string(at.Text)
	}
	s := strings.Join(strings.Fields(text), " ")
	if len(s) > longestShown {
		s = strings.ToValidUTF8(s[:longestShown], "") + "..."
	}
	return s
}

// settle makes the changed module whole again: a list or an object keeps sums
// over its members, which are made anew from within outward.
func settle(m *ast.Module) error {
	for _, r := range m.Rules {
		if _, err := ast.Transform(ast.NewGenericTransformer(func(x any) (any, error) { return x, nil }), r); err != nil {
			return fmt.Errorf("putting the changed rule together: %w", err)
		}
	}
	return nil
}
