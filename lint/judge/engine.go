package judge

import (
	"cmp"
	"context"
	"encoding/json"
	"errors"
	"math"
	"strconv"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/topdown"

	"stringline/schema/source"
)

// engine holds a codebook's compiled modules and its queries. One query asks all
// rules that do not read values; where the engine stops on a conflict, and for
// rules that do read values, each rule has a query of its own.
type engine struct {
	compiler *ast.Compiler
	joint    *rego.PreparedEvalQuery // nil where no rule can be asked jointly
	asked    []string                // the rules that the joint query asks
	single   map[string]*oneRule
	places   sync.Map // *ast.Location → *ast.Term, the text of a call's place
}

// oneRule prepares a rule's own query when it is first needed.
type oneRule struct {
	once  sync.Once
	query rego.PreparedEvalQuery
	err   error
}

// newEngine compiles modules against the schema of a codebook's input. strict
// also refuses imports and names that are not used.
func newEngine(ctx context.Context, b *Book, modules map[string]*ast.Module, allowed *ast.Capabilities, strict bool) (*engine, source.Problems) {
	schemas := ast.NewSchemaSet()
	schemas.Put(ast.SchemaRootRef, inputSchema(b.codebook))
	return compile(ctx, b, modules, ast.NewCompiler().WithCapabilities(allowed).WithSchemas(schemas).WithStrict(strict))
}

// compile makes an engine of modules and prepares its queries.
func compile(ctx context.Context, b *Book, modules map[string]*ast.Module, c *ast.Compiler) (*engine, source.Problems) {
	c.SetErrorLimit(100)
	c.Compile(modules)
	if c.Failed() {
		return nil, engineProblems(c.Errors, b.source.show("codebook.hcl"))
	}
	e := &engine{compiler: c, single: map[string]*oneRule{}}
	for _, name := range b.names {
		e.single[name] = &oneRule{}
		if !b.byValue[name] {
			e.asked = append(e.asked, name)
		}
	}
	if len(e.asked) > 0 {
		q, err := e.prepare(ctx, b.codebook.Name, e.asked)
		if err != nil {
			return nil, engineProblems(err, b.source.show("codebook.hcl"))
		}
		e.joint = &q
	}
	return e, nil
}

// prepare makes a query whose answer is an object: each rule's records by its name.
func (e *engine) prepare(ctx context.Context, book string, rules []string) (rego.PreparedEvalQuery, error) {
	items := make([][2]*ast.Term, len(rules))
	for i, name := range rules {
		check := append(ruleRef(book, name), ast.StringTerm("check"))
		items[i] = [2]*ast.Term{ast.StringTerm(name), ast.NewTerm(check)}
	}
	options := []func(*rego.Rego){
		rego.ParsedQuery(ast.NewBody(ast.NewExpr(ast.ObjectTerm(items...)))),
		rego.Compiler(e.compiler),
		rego.StrictBuiltinErrors(false),
		asTerms(),
	}
	for i := range functions {
		options = append(options, rego.FunctionDyn(
			&rego.Function{Name: functions[i].name, Decl: functions[i].decl}, e.function(functions[i].name)))
	}
	return rego.New(options...).PrepareForEval(ctx)
}

// function gives the Go side of a fact.* function.
func (e *engine) function(name string) rego.BuiltinDyn {
	if name == "fact.value" {
		return readValue
	}
	arity := 0
	for i := range functions {
		if functions[i].name == name {
			arity = functions[i].decl.Arity()
		}
	}
	return func(c rego.BuiltinContext, operands []*ast.Term) (*ast.Term, error) {
		// The engine hands over the variable for the result too: an operand
		// that held it would hold itself.
		return callTerm(name, operands[:min(arity, len(operands))], e.place(c.Location)), nil
	}
}

// place gives the term for a call's place. A rule has few call sites and many
// calls, so each site's text is made once.
func (e *engine) place(l *ast.Location) *ast.Term {
	if t, ok := e.places.Load(l); ok {
		return t.(*ast.Term)
	}
	t, _ := e.places.LoadOrStore(l, ast.StringTerm(atText(l)))
	return t.(*ast.Term)
}

// reading is what fact.value sees, and notes, while one rule is evaluated. It
// travels in the context, since functions are registered once for all designs.
type reading struct {
	structure *structure
	tables    map[string]*table
	rule      source.Range
	values    values
	from      []string // leaves that were read
	unknown   bool     // one of them is unknown
	missing   []string // what is missing of those that are
	because   string   // why one has no answer
	fault     *fault
	left      *int // steps that formulas may still take; nil where nobody counts
}

type valuesKey struct{}

// valueReader gives the number of a formula, or nil where there is none.
type valueReader interface {
	read(at source.Range, operand *ast.Term) *ast.Term
}

// readValue is fact.value. An unknown gives nothing, and is noted: whatever the
// rule makes of the silence, `not` included, its verdicts are unproven.
func readValue(c rego.BuiltinContext, operands []*ast.Term) (*ast.Term, error) {
	r, ok := c.Context.Value(valuesKey{}).(valueReader)
	if !ok {
		return nil, nil // while a test only gathers records, see bookTest.verdicts
	}
	return r.read(rangeOf(c.Location), operands[0]), nil
}

// read compiles a formula that a rule hands over and evaluates it.
func (r *reading) read(at source.Range, operand *ast.Term) *ast.Term {
	compile := reader{leaves: r.structure.leaves, tables: r.tables, rule: at}
	f, wrong := compile.formula(operand, at, 0)
	if wrong == nil && f.kind != number {
		wrong = faultAt(at, "fact.value reads numbers, not %s", f.describe())
	}
	if wrong != nil {
		r.fault = firstFault(r.fault, wrong)
		return nil
	}
	if r.left != nil {
		steps, _ := f.work()
		if *r.left -= steps; *r.left < 0 {
			r.fault = firstFault(r.fault, faultAt(at, "fact.value: the formulas would take too long to evaluate"))
			return nil
		}
	}
	v, wrong := f.evaluate(r.values)
	if wrong != nil {
		r.fault = firstFault(r.fault, wrong)
		return nil
	}
	r.from = merge(r.from, v.from)
	if !v.known {
		r.unknown, r.missing, r.because = true, merge(r.missing, v.missing), cmp.Or(r.because, v.because)
		return nil
	}
	x := f.unit.FromSI(v.si)
	if math.IsNaN(x) || math.IsInf(x, 0) {
		r.fault = firstFault(r.fault, faultAt(at, "fact.value: %s has no value in %s", f.words(nil), f.unit.Symbol))
		return nil
	}
	return ast.NumberTerm(jsonNumber(x))
}

func firstFault(a, b *fault) *fault {
	if a != nil {
		return a
	}
	return b
}

// answer is what the engine made of one rule on one structure.
type answer struct {
	records []*ast.Term
	fault   *fault // the engine gave up on the rule
	reading *reading
}

// ask evaluates all rules of the joint query. Where anything goes wrong it asks
// rule by rule, so that a broken rule harms no other.
func (e *engine) ask(ctx context.Context, b *Book, s *structure) (map[string]answer, error) {
	answers := map[string]answer{}
	if e.joint == nil {
		return answers, nil
	}
	terms, err := evaluate(ctx, e.joint, s)
	if err == nil {
		for _, name := range e.asked {
			answers[name] = answer{records: recordsOf(terms, name)}
		}
		return answers, nil
	}
	for _, name := range e.asked {
		if answers[name], err = e.askOne(ctx, b, name, s, nil); err != nil {
			return nil, err
		}
	}
	return answers, nil
}

// askOne evaluates one rule by itself. r is nil for a rule that reads no values.
// The error is the context's.
func (e *engine) askOne(ctx context.Context, b *Book, name string, s *structure, r *reading) (answer, error) {
	if r == nil {
		return e.askWith(ctx, b, name, s, nil)
	}
	a, err := e.askWith(ctx, b, name, s, r)
	a.reading = r
	a.fault = firstFault(a.fault, r.fault)
	return a, err
}

// askWith is askOne for any reader of values, or nil.
func (e *engine) askWith(ctx context.Context, b *Book, name string, s *structure, r valueReader) (answer, error) {
	one := e.single[name]
	one.once.Do(func() {
		one.query, one.err = e.prepare(context.WithoutCancel(ctx), b.codebook.Name, []string{name})
	})
	var a answer
	rule := ruleAt(b, name)
	if one.err != nil {
		a.fault = faultAt(rule, "preparing the rule: %v", one.err)
		return a, nil
	}
	if r != nil {
		ctx = context.WithValue(ctx, valuesKey{}, r)
	}
	terms, err := evaluate(ctx, &one.query, s)
	if err != nil {
		if ctx.Err() != nil {
			return a, ctx.Err()
		}
		a.fault = engineFault(err, rule)
		return a, nil
	}
	a.records = recordsOf(terms, name)
	return a, nil
}

func ruleAt(b *Book, name string) source.Range {
	for i := range b.names {
		if b.names[i] == name {
			return b.rules[i].At
		}
	}
	return source.Range{}
}

// evaluate runs a query over a structure. An error inside one of the engine's
// own functions (x / 0) would drop a record in silence, so any is an error here.
func evaluate(ctx context.Context, q *rego.PreparedEvalQuery, s *structure) (ast.Object, error) {
	var inside []topdown.Error
	results, err := q.Eval(ctx, rego.EvalParsedInput(s.input), rego.EvalBuiltinErrorList(&inside))
	if err != nil {
		return nil, err
	}
	if len(inside) > 0 {
		return nil, &inside[0]
	}
	t, err := onlyTerm(results)
	if err != nil {
		return nil, err
	}
	o, ok := t.Value.(ast.Object)
	if !ok {
		return nil, errors.New("the engine gave no object")
	}
	return o, nil
}

// onlyTerm gives the one term that a query comes to, see asTerms.
func onlyTerm(results rego.ResultSet) (*ast.Term, error) {
	if len(results) != 1 || len(results[0].Expressions) != 1 {
		return nil, errors.New("the engine gave no answer")
	}
	t, ok := results[0].Expressions[0].Value.(*ast.Term)
	if !ok {
		return nil, errors.New("the engine gave no term")
	}
	return t, nil
}

// asTerms has a query answer with the engine's own terms.
func asTerms() func(*rego.Rego) {
	return rego.GenerateJSON(func(t *ast.Term, _ *rego.EvalContext) (any, error) { return t, nil })
}

// recordsOf lists a rule's records in the engine's own order, which is fixed.
func recordsOf(o ast.Object, name string) []*ast.Term {
	t := o.Get(ast.StringTerm(name))
	if t == nil {
		return nil
	}
	set, ok := t.Value.(ast.Set)
	if !ok {
		return nil
	}
	return set.Slice()
}

func jsonNumber(x float64) json.Number {
	return json.Number(strconv.FormatFloat(x, 'g', -1, 64))
}
