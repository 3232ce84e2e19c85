package judge

import (
	"encoding/json"
	"math"
	"strconv"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/types"

	"stringline/schema/quantity"
	"stringline/schema/source"
)

// function declares one fact.* function.
type function struct {
	name string
	decl *types.Function
}

// Types of operands. An object with fixed keys unifies only with one that has
// the same keys, so an id (a text), a whole subject or a list of them where a
// formula is due does not compile.
var (
	leafType = types.NewObject([]*types.StaticProperty{
		types.NewStaticProperty("id", types.S),
		types.NewStaticProperty("unit", types.S),
	}, nil)
	builtType = types.NewObject([]*types.StaticProperty{
		types.NewStaticProperty("op", types.S),
		types.NewStaticProperty("of", types.NewArray(nil, types.A)),
		types.NewStaticProperty("at", types.S),
	}, nil)
	anyFormula = types.NewAny(leafType, builtType, types.N)
	anyYesNo   = types.NewAny(leafType, builtType, types.B)
	anyOperand = types.NewAny(leafType, builtType, types.N, types.B)
	formulas   = types.NewArray(nil, anyFormula)
	yesNos     = types.NewArray(nil, anyYesNo)
	choiceList = types.NewAny(types.NewArray(nil, types.NewAny(types.S, types.N)), leafType)
)

func calls(name string, result types.Type, args ...types.Type) function {
	return function{name: "fact." + name, decl: types.NewFunction(args, result)}
}

// functions are what a rule builds formulas with, and "fact.value", which alone
// gives it a number.
var functions = []function{
	calls("number", builtType, types.N, types.S),
	calls("times", builtType, formulas),
	calls("plus", builtType, formulas),
	calls("minus", builtType, anyFormula, anyFormula),
	calls("ratio", builtType, anyFormula, anyFormula),
	calls("largest", builtType, formulas),
	calls("smallest", builtType, formulas),
	calls("lookup", builtType, types.S, types.NewArray(nil, anyOperand)),
	calls("interpolate", builtType, types.S, types.NewArray(nil, anyOperand)),
	calls("either", builtType, anyYesNo, anyOperand, anyOperand),
	calls("more_than", builtType, anyFormula, anyFormula),
	calls("at_least", builtType, anyFormula, anyFormula),
	calls("one_of", builtType, types.NewAny(leafType, builtType), choiceList),
	calls("no", builtType, anyYesNo),
	calls("all", builtType, yesNos),
	calls("any", builtType, yesNos),
	calls("value", types.N, anyFormula),
}

// maxFinite bounds finite numbers in comparisons with infinity.
const maxFinite = math.MaxFloat64

// The keys of a formula as a term.
var (
	keyOp, keyOf, keyAt = ast.InternedTerm("op"), ast.InternedTerm("of"), ast.InternedTerm("at")
	keyID, keyUnit      = ast.InternedTerm("id"), ast.InternedTerm("unit")
)

// term makes the term of a call. It holds the operands as they came: checking
// and compiling is done once, on the way out, by reader.formula.
func callTerm(name string, operands []*ast.Term, at *ast.Term) *ast.Term {
	return ast.NewTerm(ast.NewObject(
		[2]*ast.Term{keyOp, ast.InternedTerm(strings.TrimPrefix(name, "fact."))},
		[2]*ast.Term{keyOf, ast.NewTerm(ast.NewArray(operands...))},
		[2]*ast.Term{keyAt, at},
	))
}

// atText writes a call's place into a term; reader.place reads it back.
func atText(l *ast.Location) string {
	if l == nil {
		return ""
	}
	return l.File + ":" + strconv.Itoa(l.Row) + ":" + strconv.Itoa(l.Col)
}

// Bounds on formulas, so that no rule can build one that takes for ever.
const (
	deepestFormula  = 60
	largestFormula  = 5000
	longestConstant = 40
)

// reader turns terms that a rule made into formulas. Nothing in a term is
// trusted: every unit and kind is checked here, against the leaves that the
// design's structure has.
type reader struct {
	leaves map[string]leaf
	tables map[string]*table
	rule   source.Range // the place to name where a term carries none
	shelf  *shelf       // nil: every formula stands alone
	nodes  int
}

// leaf is what a design's structure tells about a fact.
type leaf struct {
	kind kind
	unit quantity.Unit
	text string // the unit as documents write it
}

// formula compiles a term. around is the place of the call that it stands in.
func (r *reader) formula(t *ast.Term, around source.Range, depth int) (*formula, *fault) {
	f, wrong := r.compile(t, around, depth)
	if wrong != nil {
		return nil, wrong
	}
	return r.shelf.one(f), nil
}

func (r *reader) compile(t *ast.Term, around source.Range, depth int) (*formula, *fault) {
	r.nodes++
	if depth > deepestFormula || r.nodes > largestFormula {
		return nil, faultAt(around, "the formula is too large: more than %d parts or %d levels", largestFormula, deepestFormula)
	}
	switch v := t.Value.(type) {
	case ast.Number:
		return plainNumber(v, bare, around)
	case ast.Boolean:
		return &formula{op: "yes_no", kind: yesNo, yes: bool(v), at: around}, nil
	case ast.Object:
		if v.Get(keyID) != nil {
			return r.leaf(v, around)
		}
		if v.Get(keyOp) != nil {
			return r.call(v, around, depth)
		}
	}
	return nil, faultAt(around, "a fact or a fact.* formula is due here, not %s", termKind(t))
}

func plainNumber(n ast.Number, unit quantity.Unit, at source.Range) (*formula, *fault) {
	if len(n) > longestConstant {
		return nil, faultAt(at, "a number of more than %d digits", longestConstant)
	}
	x, err := json.Number(n).Float64()
	si := unit.ToSI(x)
	if err != nil || math.IsInf(si, 0) || math.IsNaN(si) { // an infinite limit would be met by all
		return nil, faultAt(at, "%s is too large for a number", strings.TrimSpace(string(n)+" "+unit.Symbol))
	}
	text := strconv.FormatFloat(x, 'g', 6, 64)
	switch {
	case unit.Scale == 0: // a gauge is a name: 3/0 and not -2
		text = quantity.Format(si, unit.Symbol)
	case unit.Symbol != "":
		text += " " + unit.Symbol
	}
	return &formula{op: "number", kind: number, unit: unit, number: si, text: text, at: at}, nil
}

func (r *reader) leaf(o ast.Object, around source.Range) (*formula, *fault) {
	id, ok := textAt(o, keyID)
	if !ok {
		return nil, faultAt(around, "a fact's id is a text")
	}
	unit, hasUnit := textAt(o, keyUnit)
	known, isLeaf := r.leaves[id]
	if !isLeaf || !hasUnit || o.Len() != 2 || unit != known.text {
		if !isLeaf && !hasUnit {
			return nil, faultAt(around, "%s is a whole subject: name one of its facts", quote(id))
		}
		return nil, faultAt(around, "there is no fact %s", quote(id))
	}
	return &formula{op: "leaf", kind: known.kind, unit: known.unit, id: id, at: around}, nil
}

// call compiles a call of a fact.* function from its term.
func (r *reader) call(o ast.Object, around source.Range, depth int) (*formula, *fault) {
	op, ok := textAt(o, keyOp)
	of, okOf := arrayAt(o, keyOf)
	place, okAt := textAt(o, keyAt)
	if !ok || !okOf || !okAt || o.Len() != 3 {
		return nil, faultAt(around, "only the fact.* functions make formulas")
	}
	at := r.place(place, around)
	wrong := func() (*formula, *fault) {
		return nil, faultAt(at, "fact.%s cannot be called like that", op)
	}
	switch op {
	case "number":
		if of.Len() != 2 {
			return wrong()
		}
		n, isNumber := of.Elem(0).Value.(ast.Number)
		symbol, isText := of.Elem(1).Value.(ast.String)
		if !isNumber || !isText {
			return wrong()
		}
		unit, known := quantity.Lookup(string(symbol))
		if !known {
			return nil, faultAt(at, "fact.number: %s is not a unit", quote(string(symbol)))
		}
		return plainNumber(n, unit, at)
	case "times", "plus", "largest", "smallest", "all", "any":
		if of.Len() != 1 {
			return wrong()
		}
		operands, fault := r.list(of.Elem(0), at, depth)
		if fault != nil {
			return nil, fault
		}
		return combine(op, operands, at)
	case "minus", "ratio", "more_than", "at_least", "no", "either":
		due := map[string]int{"no": 1, "either": 3}[op]
		if due == 0 {
			due = 2
		}
		if of.Len() != due {
			return wrong()
		}
		operands := make([]*formula, due)
		for i := range operands {
			f, fault := r.formula(of.Elem(i), at, depth+1)
			if fault != nil {
				return nil, fault
			}
			operands[i] = f
		}
		return combine(op, operands, at)
	case "one_of":
		if of.Len() != 2 {
			return wrong()
		}
		return r.oneOf(of, at, depth)
	case "lookup", "interpolate":
		if of.Len() != 2 {
			return wrong()
		}
		name, isText := of.Elem(0).Value.(ast.String)
		if !isText {
			return wrong()
		}
		t := r.tables[string(name)]
		if t == nil {
			return nil, faultAt(at, "fact.%s: there is no table %s", op, quote(string(name)))
		}
		operands, fault := r.list(of.Elem(1), at, depth)
		if fault != nil {
			return nil, fault
		}
		return look(op, t, operands, at)
	}
	return nil, faultAt(at, "there is no function fact.%s", op)
}

func (r *reader) list(t *ast.Term, at source.Range, depth int) ([]*formula, *fault) {
	a, ok := t.Value.(*ast.Array)
	if !ok {
		return nil, faultAt(at, "a list of formulas is due here, not %s", termKind(t))
	}
	operands := make([]*formula, 0, a.Len())
	for i := range a.Len() {
		f, fault := r.formula(a.Elem(i), at, depth+1)
		if fault != nil {
			return nil, fault
		}
		operands = append(operands, f)
	}
	return operands, nil
}

func (r *reader) oneOf(of *ast.Array, at source.Range, depth int) (*formula, *fault) {
	first, fault := r.formula(of.Elem(0), at, depth+1)
	if fault != nil {
		return nil, fault
	}
	a, ok := of.Elem(1).Value.(*ast.Array)
	if !ok {
		second, fault := r.formula(of.Elem(1), at, depth+1)
		if fault != nil {
			return nil, fault
		}
		return choose(first, second, nil, at)
	}
	var choices []constant
	for i := range a.Len() {
		switch v := a.Elem(i).Value.(type) {
		case ast.String:
			choices = append(choices, constant{word: string(v), isWord: true})
		case ast.Number:
			f, fault := plainNumber(v, bare, at)
			if fault != nil {
				return nil, fault
			}
			choices = append(choices, constant{number: f.number})
		default:
			return nil, faultAt(at, "fact.one_of takes plain words or numbers, not %s", termKind(a.Elem(i)))
		}
	}
	return choose(first, nil, choices, at)
}

// place reads what atText wrote. Columns count code points, lines end with LF.
func (r *reader) place(text string, otherwise source.Range) source.Range {
	head, column, ok := cutLast(text, ':')
	if !ok {
		return otherwise
	}
	file, row, ok := cutLast(head, ':')
	if !ok {
		return otherwise
	}
	line, err1 := strconv.Atoi(row)
	col, err2 := strconv.Atoi(column)
	if err1 != nil || err2 != nil || line < 1 || col < 1 {
		return otherwise
	}
	p := source.Position{Line: line, Column: col}
	return source.Range{File: file, Start: p, End: p}
}

func cutLast(s string, b byte) (before, after string, ok bool) {
	i := strings.LastIndexByte(s, b)
	if i < 0 {
		return s, "", false
	}
	return s[:i], s[i+1:], true
}

func textAt(o ast.Object, key *ast.Term) (string, bool) {
	t := o.Get(key)
	if t == nil {
		return "", false
	}
	s, ok := t.Value.(ast.String)
	return string(s), ok
}

func arrayAt(o ast.Object, key *ast.Term) (*ast.Array, bool) {
	t := o.Get(key)
	if t == nil {
		return nil, false
	}
	a, ok := t.Value.(*ast.Array)
	return a, ok
}

// termKind names a term's kind for an error.
func termKind(t *ast.Term) string {
	switch v := t.Value.(type) {
	case ast.Null:
		return "null"
	case ast.Boolean:
		return "true or false"
	case ast.Number:
		return "a plain number"
	case ast.String:
		return "the text " + quote(string(v))
	case *ast.Array:
		return "a list"
	case ast.Set:
		return "a set"
	case ast.Object:
		if id, ok := textAt(v, keyID); ok {
			return quote(id)
		}
		return "an object"
	}
	return "something else"
}

// quote shows a text of a rule in a message, cut short.
func quote(s string) string {
	if len(s) > 80 {
		s = strings.ToValidUTF8(s[:80], "") + "..."
	}
	return strconv.Quote(s)
}
