package judge

import (
	"encoding/json"
	"errors"
	"fmt"
	"path"
	"slices"
	"strconv"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/tester"
	"github.com/open-policy-agent/opa/v1/types"

	"stringline/lint/verdict"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// Functions that exist while rule_test.rego runs, and nowhere else.
var (
	// test.facts("meets") gives the input tree of an example design of the rule
	// whose test calls it.
	testFacts = rego.Function{Name: "test.facts", Decl: types.NewFunction(types.Args(types.S), types.A)}
	// test.verdicts(input, rule.check, {id: "150 V"}) gives the verdicts of the
	// records on that design. Values in the third operand stand in for the
	// facts of those ids: a quantity or word as text, a number, true or false,
	// null for unknown. One for an attribute counts in what is derived from it
	// too. An id that is no fact is an error.
	testVerdicts = rego.Function{Name: "test.verdicts", Decl: types.NewFunction(types.Args(types.A, types.SetOfAny, types.A), types.NewArray(nil, types.A))}
)

// keyExample marks a tree of test.facts with the example that it is of: designs
// of one structure have one tree, and a test's verdicts need the right values.
var keyExample = ast.InternedTerm("example")

// functions registers fact.* and test.* with the test runner.
func (t *bookTest) functions() []*tester.Builtin {
	all := []*tester.Builtin{
		{Decl: &ast.Builtin{Name: testFacts.Name, Decl: testFacts.Decl}, Func: rego.FunctionDyn(&testFacts, t.noted(t.facts))},
		{Decl: &ast.Builtin{Name: testVerdicts.Name, Decl: testVerdicts.Decl}, Func: rego.FunctionDyn(&testVerdicts, t.noted(t.verdicts))},
	}
	for i := range functions {
		f := &rego.Function{Name: functions[i].name, Decl: functions[i].decl}
		all = append(all, &tester.Builtin{
			Decl: &ast.Builtin{Name: f.Name, Decl: f.Decl},
			Func: rego.FunctionDyn(f, t.book.engine.function(f.Name)),
		})
	}
	return all
}

// regoFunctions gives the same for a query without the runner.
func (t *bookTest) regoFunctions() []func(*rego.Rego) {
	var all []func(*rego.Rego)
	for _, b := range t.functions() {
		all = append(all, b.Func)
	}
	return all
}

// noted keeps what went wrong in a call of test.*, with its place: of several
// errors in one test the runner keeps a jumble.
func (t *bookTest) noted(call rego.BuiltinDyn) rego.BuiltinDyn {
	return func(c rego.BuiltinContext, operands []*ast.Term) (*ast.Term, error) {
		made, err := call(c, operands)
		if err != nil {
			rule := t.ruleOf(c.Location)
			said := fmt.Sprintf("%s: %v", rangeOf(c.Location), err)
			t.mutex.Lock()
			defer t.mutex.Unlock()
			if !slices.Contains(t.errors[rule], said) {
				t.errors[rule] = append(t.errors[rule], said)
			}
		}
		return made, err
	}
}

// ruleOf gives the rule whose test makes a call.
func (t *bookTest) ruleOf(l *ast.Location) string {
	if l == nil {
		return ""
	}
	return path.Base(path.Dir(l.File))
}

func (t *bookTest) facts(c rego.BuiltinContext, operands []*ast.Term) (*ast.Term, error) {
	name, ok := operands[0].Value.(ast.String)
	if !ok {
		return nil, errors.New("the example is named by a text")
	}
	key := t.ruleOf(c.Location) + "/" + string(name)
	e := t.examples[key]
	if e == nil {
		return nil, fmt.Errorf("there is no example %q that loads", string(name))
	}
	return e.tree, nil
}

// plant makes the trees of all examples, before tests run side by side.
func (t *bookTest) plant() {
	for key, e := range t.examples {
		e.structure = t.structure(e.system)
		top := [][2]*ast.Term{{keyExample, ast.StringTerm(key)}}
		if o, ok := e.structure.input.(ast.Object); ok {
			o.Foreach(func(k, v *ast.Term) { top = append(top, [2]*ast.Term{k, v}) })
		}
		e.tree = ast.ObjectTerm(top...)
	}
}

func (t *bookTest) verdicts(c rego.BuiltinContext, operands []*ast.Term) (*ast.Term, error) {
	tree, ok := operands[0].Value.(ast.Object)
	if !ok {
		return nil, errors.New("the first operand is input, with input as test.facts(...)")
	}
	key, _ := textAt(tree, keyExample)
	e := t.examples[key]
	if e == nil {
		return nil, errors.New("input is not that of an example: write `with input as test.facts(...)`")
	}
	records, ok := operands[1].Value.(ast.Set)
	if !ok {
		return nil, errors.New("the second operand is the rule's check")
	}
	rule := t.ruleOf(c.Location)
	t.mutex.Lock() // a system serves one goroutine at a time
	defer t.mutex.Unlock()
	st := e.structure
	system, set, undo, err := t.standIn(key, e, operands[2])
	if err != nil {
		return nil, err
	}
	defer undo()
	court := &court{judge: t.judge, system: system, places: map[string][]source.Range{}}
	court.values = &standIns{values: court, set: set}
	bench := court.bench(t.book.rule(rule))
	var d decoded
	if t.book.byValue[rule] { // what it made of unread values does not count
		d, err = t.book.put(c.Context, rule, st, court.values, nil)
	} else {
		d = decode(t.book, rule, st, answer{records: records.Slice()}, nil)
	}
	if err != nil {
		return nil, err
	}
	vs := bench.all(&d, system)
	verdict.Sort(vs)
	terms := make([]*ast.Term, len(vs))
	for i := range vs {
		terms[i] = verdictTerm(&vs[i])
	}
	return ast.ArrayTerm(terms...), nil
}

// verdictTerm shows a verdict to a test.
func verdictTerm(v *verdict.Verdict) *ast.Term {
	texts := func(of []string) *ast.Term {
		terms := make([]*ast.Term, len(of))
		for i, s := range of {
			terms[i] = ast.StringTerm(s)
		}
		return ast.ArrayTerm(terms...)
	}
	limits := make([]*ast.Term, len(v.Limits))
	for i := range v.Limits {
		limits[i] = measuredTerm(&v.Limits[i])
	}
	also := make([]*ast.Term, len(v.Also))
	for i := range v.Also {
		also[i] = measuredTerm(&v.Also[i])
	}
	item := func(key string, value *ast.Term) [2]*ast.Term { return [2]*ast.Term{ast.InternedTerm(key), value} }
	spare, fault, which := ast.NullTerm(), ast.NullTerm(), ast.NullTerm()
	if v.Which != "" {
		which = ast.StringTerm(v.Which)
	}
	if v.Spare != nil {
		spare = numberTerm(&v.Spare.Value)
	}
	if v.Fault != nil {
		fault = ast.StringTerm(v.Fault.Message)
	}
	params := make([]string, len(v.Parameters))
	for i := range v.Parameters {
		params[i] = v.Parameters[i].Name
	}
	return ast.ObjectTerm(
		item("about", ast.StringTerm(v.About)), item("which", which),
		item("verdict", ast.StringTerm(string(v.Outcome))), item("grade", ast.StringTerm(string(v.Grade))),
		item("message", ast.StringTerm(v.Message)), item("because", ast.StringTerm(v.Because)), item("remedy", ast.StringTerm(v.Remedy)),
		item("relation", ast.StringTerm(v.Relation)), item("is", measuredTerm(v.Is)), item("limits", ast.ArrayTerm(limits...)), item("also", ast.ArrayTerm(also...)),
		item("spare", spare), item("headroom", numberTerm(v.Headroom)),
		item("missing", texts(v.Missing)), item("assumed", texts(v.Assumed)), item("params", texts(params)), item("fault", fault),
	)
}

func measuredTerm(m *verdict.Measured) *ast.Term {
	switch {
	case m == nil:
		return ast.NullTerm()
	case m.Word != nil:
		return ast.StringTerm(*m.Word)
	case m.Yes != nil:
		return ast.BooleanTerm(*m.Yes)
	}
	return numberTerm(m.Value)
}

func numberTerm(x *float64) *ast.Term {
	if x == nil {
		return ast.NullTerm()
	}
	return ast.NumberTerm(json.Number(strconv.FormatFloat(quantity.Round(*x), 'g', -1, 64)))
}
