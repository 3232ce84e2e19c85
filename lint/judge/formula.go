package judge

import (
	"fmt"
	"strings"
	"sync/atomic"

	"stringline/schema/quantity"
	"stringline/schema/source"
)

// kind is what a formula yields.
type kind uint8

const (
	number kind = iota
	word
	yesNo
	list // of numbers: a leaf alone, and only behind one_of
)

func (k kind) String() string {
	return [...]string{"a number", "a word", "a yes/no", "a list"}[k]
}

// formula is one compiled formula: a tree of operations over leaves. It holds
// no value of any design, so one tree serves every design of a structure and
// may be evaluated by many goroutines at once.
type formula struct {
	op   string // "leaf", "number", "yes_no", or the function's name behind "fact."
	of   []*formula
	at   source.Range // the call in the rule; of a leaf, that of the call around it
	kind kind
	unit quantity.Unit // of numbers: dimension, and how people are shown the result

	place int                    // on the shelf of its codebook's records, from 1; 0 where it stands alone
	ids   atomic.Pointer[string] // the formula in words, its leaves as ids; written when first asked for

	id      string     // leaf
	number  float64    // number: the constant, SI
	text    string     // number: as written
	yes     bool       // yes_no: the constant
	table   *table     // lookup, interpolate
	choices []constant // one_of
}

// constant is one entry of one_of's list.
type constant struct {
	word   string
	number float64
	isWord bool
}

// fault is why a formula or a record cannot be used. It makes a verdict void.
type fault struct {
	message string
	at      source.Range
}

func (f *fault) Error() string { return f.message }

func faultAt(at source.Range, format string, args ...any) *fault {
	return &fault{message: fmt.Sprintf(format, args...), at: at}
}

// bare is the unit of numbers without one.
var bare = quantity.Unit{Scale: 1}

// describe names a formula's kind and dimension for an error.
func (f *formula) describe() string {
	what := f.kind.String()
	if f.kind == number {
		what = f.unit.Dimension.Noun()
		if f.unit.Dimension.IsNumber() {
			what = "a bare number"
		}
	}
	if f.op == "leaf" {
		return what + " (" + f.id + ")"
	}
	return what
}

// combine checks the operands of a function and gives the formula. Every check
// of units and kinds is here, made when the rule is put to a design's
// structure, before any value is looked at.
func combine(op string, of []*formula, at source.Range) (*formula, *fault) {
	f := &formula{op: op, of: of, at: at, kind: number}
	call := "fact." + op
	want := func(k kind) *fault {
		for _, x := range of {
			if x.kind != k {
				return faultAt(at, "%s takes %ss, not %s", call, strings.TrimPrefix(k.String(), "a "), x.describe())
			}
		}
		return nil
	}
	if len(of) == 0 {
		return nil, faultAt(at, "%s: the list is empty", call)
	}
	var wrong *fault
	switch op {
	case "times":
		if wrong = want(number); wrong == nil {
			f.unit, wrong = product(of, at)
		}
	case "ratio":
		if wrong = want(number); wrong == nil {
			f.unit, wrong = quotient(of[0], of[1], at)
		}
	case "plus", "minus":
		if wrong = want(number); wrong == nil {
			f.unit, wrong = sum(op, of, at)
		}
	case "largest", "smallest":
		if wrong = want(number); wrong == nil {
			f.unit, wrong = same(call, of, at)
		}
	case "more_than", "at_least":
		f.kind = yesNo
		if wrong = want(number); wrong == nil {
			_, wrong = same(call, of, at)
		}
	case "no", "all", "any":
		f.kind = yesNo
		wrong = want(yesNo)
	case "either":
		f.kind = of[1].kind
		switch {
		case of[0].kind != yesNo:
			wrong = faultAt(at, "fact.either asks a yes/no first, not %s", of[0].describe())
		case of[1].kind == list || of[2].kind == list:
			wrong = faultAt(at, "fact.either takes no list")
		case of[1].kind != of[2].kind:
			wrong = faultAt(at, "fact.either: %s or %s: the two differ in kind", of[1].describe(), of[2].describe())
		case f.kind == number:
			f.unit, wrong = same(call, of[1:], at)
		}
	default:
		wrong = faultAt(at, "there is no function %s", call)
	}
	if wrong != nil {
		return nil, wrong
	}
	return f, nil
}

// product multiplies dimensions. A temperature on a scale has no meaning as a
// factor (2 times 20 degC), so it is refused.
func product(of []*formula, at source.Range) (quantity.Unit, *fault) {
	var d quantity.Dimension
	keep, several := bare, false
	for _, x := range of {
		if x.unit.Dimension.Point {
			return bare, faultAt(at, "fact.times: a temperature cannot be multiplied: %s; take a difference first", x.describe())
		}
		d = d.Times(x.unit.Dimension)
		if x.unit.Symbol != "" {
			several = several || keep.Symbol != ""
			keep = x.unit
		}
	}
	return resultUnit(d, keep, several), nil
}

func quotient(a, b *formula, at source.Range) (quantity.Unit, *fault) {
	for _, x := range []*formula{a, b} {
		if x.unit.Dimension.Point {
			return bare, faultAt(at, "fact.ratio: a temperature cannot be divided: %s; take a difference first", x.describe())
		}
	}
	return resultUnit(a.unit.Dimension.Over(b.unit.Dimension), a.unit, b.unit.Symbol != ""), nil
}

// resultUnit keeps the one operand's unit where the others are bare numbers
// (1.25 x 40 A is shown in A), else takes the usual unit of the dimension.
func resultUnit(d quantity.Dimension, keep quantity.Unit, several bool) quantity.Unit {
	if keep.Dimension == d && (!several || !d.IsNumber()) {
		return keep
	}
	return d.Unit()
}

func sum(op string, of []*formula, at source.Range) (quantity.Unit, *fault) {
	d := of[0].unit.Dimension
	for _, x := range of[1:] {
		var next quantity.Dimension
		var ok bool
		if op == "plus" {
			next, ok = d.Plus(x.unit.Dimension)
		} else {
			next, ok = d.Minus(x.unit.Dimension)
		}
		if !ok {
			return bare, faultAt(at, "fact.%s: %s and %s do not go together", op, of[0].describe(), x.describe())
		}
		d = next
	}
	for _, x := range of { // the first operand that is shown in a fitting unit lends it
		if x.unit.Dimension == d {
			return x.unit, nil
		}
	}
	return d.Unit(), nil
}

func same(call string, of []*formula, at source.Range) (quantity.Unit, *fault) {
	for _, x := range of[1:] {
		if x.unit.Dimension != of[0].unit.Dimension {
			return bare, faultAt(at, "%s: %s and %s cannot be compared", call, of[0].describe(), x.describe())
		}
	}
	return of[0].unit, nil
}

// choose makes the formula of one_of. second is a leaf that holds a list, or
// nil; then choices are the plain words or numbers, these in the leaf's unit.
func choose(first, second *formula, choices []constant, at source.Range) (*formula, *fault) {
	f := &formula{op: "one_of", of: []*formula{first}, at: at, kind: yesNo, choices: choices}
	if second != nil {
		switch {
		case second.kind != list:
			return nil, faultAt(at, "fact.one_of takes a list second, not %s", second.describe())
		case first.kind != number || first.unit.Dimension != second.unit.Dimension:
			return nil, faultAt(at, "fact.one_of: %s is never in a list of %s", first.describe(), second.unit.Dimension.Noun())
		}
		f.of = append(f.of, second)
		return f, nil
	}
	if len(choices) == 0 {
		return nil, faultAt(at, "fact.one_of: the list is empty")
	}
	for _, c := range choices {
		switch {
		case c.isWord && first.kind != word:
			return nil, faultAt(at, "fact.one_of: %s is never %q", first.describe(), c.word)
		case !c.isWord && first.kind != number:
			return nil, faultAt(at, "fact.one_of: %s is never %v", first.describe(), c.number)
		}
	}
	return f, nil
}

// look makes the formula of lookup and interpolate.
func look(op string, t *table, of []*formula, at source.Range) (*formula, *fault) {
	if len(of) != len(t.axes) {
		return nil, faultAt(at, "fact.%s: table %q has %d axes, not %d", op, t.name, len(t.axes), len(of))
	}
	for i, x := range of {
		a := &t.axes[i]
		if x.kind != a.kind || a.kind == number && x.unit.Dimension != a.unit.Dimension {
			return nil, faultAt(at, "fact.%s: axis %q of table %q does not take %s", op, a.name, t.name, x.describe())
		}
	}
	if op == "interpolate" && t.kind != number {
		return nil, faultAt(at, "fact.interpolate: table %q holds words", t.name)
	}
	return &formula{op: op, of: of, at: at, kind: t.kind, unit: t.unit, table: t}, nil
}
