package judge

import (
	"cmp"
	"math"
	"slices"

	"stringline/lint/facts"
)

// slack is the relative slack of comparisons: exactly at a limit meets it,
// although the last digits of float64 say otherwise.
const slack = 1e-9

// near tells whether two SI values are equal within the slack.
func near(a, b float64) bool {
	return a == b || math.Abs(a-b) <= slack*math.Max(math.Abs(a), math.Abs(b))
}

// values gives a fact by its id: those of a design, a codebook's parameters,
// and in tests what a test puts in their place.
type values interface {
	fact(id string) (facts.Fact, bool)
}

// value is what a formula came to. Of a number, low and high hold whether it
// is known or not; they are infinite where nothing is known.
type value struct {
	known     bool
	si        float64
	low, high float64
	word      string
	yes       bool
	missing   []string // attributes that would make it known
	because   string   // why it is unknown although all that it reads is given
	from      []string // the leaves that decided it
	despite   []string // what was missing where logic decided without it
}

func unbounded() value { return value{low: math.Inf(-1), high: math.Inf(1)} }

func exactly(si float64) value { return value{known: true, si: si, low: si, high: si} }

// compute computes a formula over the values of one design. An unknown operand
// makes the result unknown, but where logic decides without it; what is known
// of its size is carried in low and high, so that an unknown cannot hide a
// breach. Branches that decide nothing are not looked at: what is out of a
// table's range there does no harm.
func (f *formula) compute(vs values) (value, *fault) {
	switch f.op {
	case "leaf":
		return f.leaf(vs)
	case "number":
		return exactly(f.number), nil
	case "yes_no":
		return value{known: true, yes: f.yes}, nil
	case "either":
		return f.either(vs)
	case "all", "any":
		return f.logic(vs)
	case "lookup", "interpolate":
		return f.look(vs)
	case "one_of":
		return f.oneOf(vs)
	}
	of := make([]value, len(f.of))
	for i, x := range f.of {
		v, wrong := x.evaluate(vs)
		if wrong != nil {
			return value{}, wrong
		}
		of[i] = v
	}
	v := value{known: true}
	for i := range of {
		v.take(&of[i])
	}
	switch f.op {
	case "no":
		v.yes = !of[0].yes
		return v, nil
	case "more_than", "at_least":
		f.compare(&v, &of[0], &of[1])
		return v, nil
	}
	if f.op == "ratio" && of[1].known && of[1].si == 0 {
		return value{}, faultAt(f.at, "fact.ratio: division by zero: %s is 0", f.of[1].words(nil))
	}
	v.si, v.low, v.high = arithmetic(f.op, of)
	if v.known {
		if math.IsNaN(v.si) || math.IsInf(v.si, 0) {
			return value{}, faultAt(f.at, "fact.%s: the result is too large for a number", f.op)
		}
		v.low, v.high = v.si, v.si
	}
	return v, nil
}

// take adds an operand's provenance, and its unknown.
func (v *value) take(of *value) {
	v.known = v.known && of.known
	v.from = merge(v.from, of.from)
	v.missing = merge(v.missing, of.missing)
	v.because = cmp.Or(v.because, of.because)
	v.despite = merge(v.despite, of.despite)
}

// merge appends what is not there yet. The lists are short. It never writes into
// either, which others may hold.
func merge(to, from []string) []string {
	if len(to) == 0 {
		return from
	}
	shared := true
	for _, s := range from {
		if slices.Contains(to, s) {
			continue
		}
		if shared {
			to, shared = slices.Clip(to), false
		}
		to = append(to, s)
	}
	return to
}

func (f *formula) leaf(vs values) (value, *fault) {
	x, ok := vs.fact(f.id)
	if !ok {
		return value{}, faultAt(f.at, "there is no fact %q", f.id)
	}
	// Of a codebook's question that a design leaves open the design does not
	// know the kind.
	if k := kindOf(x.Kind); k != f.kind && x.Known {
		return value{}, faultAt(f.at, "%s is %s, not %s", f.id, k, f.kind)
	}
	v := value{known: x.Known, si: x.SI, low: x.SI, high: x.SI, word: x.Word, yes: x.Yes, from: []string{f.id}}
	if x.Known {
		if f.kind == number && (math.IsNaN(x.SI) || math.IsInf(x.SI, 0)) {
			return value{}, faultAt(f.at, "%s is not a finite number", f.id)
		}
		return v, nil
	}
	v.si, v.low, v.high = 0, math.Inf(-1), math.Inf(1)
	if x.AtLeast != nil && !math.IsNaN(*x.AtLeast) {
		v.low = *x.AtLeast
	}
	v.missing, v.because = lacking(f.id, &x)
	return v, nil
}

// lacking says what an unknown fact is missing, and why a method has no answer.
func lacking(id string, x *facts.Fact) (missing []string, because string) {
	if len(x.Missing) == 0 && x.Because == "" {
		return []string{id}, ""
	}
	return x.Missing, x.Because
}

// kindOf gives the kind that a fact has in formulas.
func kindOf(k facts.Kind) kind {
	switch k {
	case facts.Word:
		return word
	case facts.YesNo:
		return yesNo
	case facts.List, facts.Series:
		return list
	}
	return number
}

// arithmetic computes a number and the interval that it lies in. The number is
// meaningless where an operand is unknown; the interval always holds.
func arithmetic(op string, of []value) (si, low, high float64) {
	si, low, high = of[0].si, of[0].low, of[0].high
	for _, x := range of[1:] {
		switch op {
		case "plus":
			si, low, high = si+x.si, low+x.low, high+x.high
		case "minus":
			si, low, high = si-x.si, low-x.high, high-x.low
		case "times":
			si *= x.si
			low, high = span(low*x.low, low*x.high, high*x.low, high*x.high)
		case "ratio":
			si /= x.si
			if x.low <= 0 && x.high >= 0 { // may divide by zero
				low, high = math.Inf(-1), math.Inf(1)
			} else {
				low, high = span(low/x.low, low/x.high, high/x.low, high/x.high)
			}
		case "largest":
			si, low, high = max(si, x.si), max(low, x.low), max(high, x.high)
		case "smallest":
			si, low, high = min(si, x.si), min(low, x.low), min(high, x.high)
		}
	}
	if math.IsNaN(low) {
		low = math.Inf(-1)
	}
	if math.IsNaN(high) {
		high = math.Inf(1)
	}
	return si, low, high
}

// span gives the ends of an interval from products of its operands' ends. Zero
// times infinity counts as no bound at all.
func span(ends ...float64) (low, high float64) {
	low, high = ends[0], ends[0]
	for _, e := range ends {
		if math.IsNaN(e) {
			return math.Inf(-1), math.Inf(1)
		}
		low, high = min(low, e), max(high, e)
	}
	return low, high
}

// compare decides more_than and at_least, on bounds where they suffice.
func (f *formula) compare(v, a, b *value) {
	v.known = true
	switch above, equal := a.low > b.high, a.known && b.known && near(a.si, b.si); {
	case equal:
		v.yes = f.op == "at_least"
	case above && !near(a.low, b.high), f.op == "at_least" && a.low >= b.high:
		v.yes = true
	case a.high < b.low && !near(a.high, b.low), f.op == "more_than" && a.high <= b.low:
		v.yes = false
	default:
		v.known = a.known && b.known // never both here: known values are decided above
	}
	if v.known {
		v.despite, v.missing, v.because = merge(v.despite, v.missing), nil, ""
	}
}

func (f *formula) either(vs values) (value, *fault) {
	y, wrong := f.of[0].evaluate(vs)
	if wrong != nil {
		return value{}, wrong
	}
	if y.known {
		chosen := f.of[2]
		if y.yes {
			chosen = f.of[1]
		}
		v, wrong := chosen.evaluate(vs)
		v.from = merge(y.from, v.from)
		v.despite = merge(y.despite, v.despite)
		return v, wrong
	}
	v := unbounded()
	v.from, v.missing, v.because = y.from, y.missing, y.because
	if f.kind != number {
		return v, nil
	}
	a, wrongA := f.of[1].evaluate(vs)
	b, wrongB := f.of[2].evaluate(vs)
	if wrongA == nil && wrongB == nil { // whichever it will be, it lies between these
		v.low, v.high = min(a.low, b.low), max(a.high, b.high)
	}
	return v, nil
}

// logic is Kleene's: one no settles all, one yes settles any, whatever else is
// unknown. The result then rests on that operand alone.
func (f *formula) logic(vs values) (value, *fault) {
	settles := f.op == "any"
	v := value{known: true, yes: !settles}
	for _, x := range f.of {
		o, wrong := x.evaluate(vs)
		if wrong != nil {
			return value{}, wrong
		}
		if o.known && o.yes == settles {
			o.missing, o.because, o.despite = nil, "", merge(merge(o.despite, v.missing), v.despite)
			return o, nil
		}
		v.take(&o)
	}
	return v, nil
}

func (f *formula) oneOf(vs values) (value, *fault) {
	x, wrong := f.of[0].evaluate(vs)
	if wrong != nil {
		return value{}, wrong
	}
	v := value{known: x.known, from: x.from, missing: x.missing, because: x.because, despite: x.despite}
	if len(f.of) == 2 {
		return f.inList(vs, x, v)
	}
	for _, c := range f.choices {
		if c.isWord && c.word == x.word || !c.isWord && near(f.of[0].unit.ToSI(c.number), x.si) {
			v.yes = true
		}
	}
	return v, nil
}

// inList looks a number up in a leaf that holds a list.
func (f *formula) inList(vs values, x, v value) (value, *fault) {
	leaf := f.of[1]
	l, ok := vs.fact(leaf.id)
	if !ok {
		return value{}, faultAt(leaf.at, "there is no fact %q", leaf.id)
	}
	v.from = merge(v.from, []string{leaf.id})
	if !l.Known {
		v.known = false
		missing, because := lacking(leaf.id, &l)
		v.missing, v.because = merge(v.missing, missing), cmp.Or(v.because, because)
	}
	v.yes = slices.ContainsFunc(l.List, func(e float64) bool { return near(e, x.si) })
	return v, nil
}

func (f *formula) look(vs values) (value, *fault) {
	v := value{known: true, low: math.Inf(-1), high: math.Inf(1)}
	at := make([]cell, len(f.of))
	for i, x := range f.of {
		o, wrong := x.evaluate(vs)
		if wrong != nil {
			return value{}, wrong
		}
		v.take(&o)
		at[i] = cell{si: o.si, word: o.word, yes: o.yes}
	}
	if !v.known {
		return v, nil
	}
	var found cell
	var err error
	if f.op == "lookup" {
		found, err = f.table.lookup(at)
	} else {
		found.si, err = f.table.interpolate(at)
	}
	if err != nil {
		return value{}, faultAt(f.at, "fact.%s: %v", f.op, err)
	}
	if math.IsNaN(found.si) || math.IsInf(found.si, 0) {
		return value{}, faultAt(f.at, "fact.%s: the result is too large for a number", f.op)
	}
	v.si, v.word, v.yes = found.si, found.word, found.yes
	v.low, v.high = v.si, v.si
	return v, nil
}
