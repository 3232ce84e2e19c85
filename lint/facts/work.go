package facts

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"stringline/schema/design"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// Fact is one computed fact, or one attribute.
type Fact struct {
	ID    string
	Unit  string // the documents' unit, "word" or "yes_no"
	Kind  Kind
	Known bool
	SI    float64 // Quantity, in SI
	Word  string
	Yes   bool
	List  []float64 // List and Series, in SI
	Over  []float64 // of a Series: what each value of List stands at, in SI; its unit is the entry's Over
	// Missing holds the ids of the attributes that would make the fact known,
	// where it is unknown; in the order in which they were asked for. None where
	// nothing is missing and Because says why it is unknown all the same.
	Missing []string
	// Because says why a method has no answer although all that it reads is known:
	// of an unknown fact, or of one that it rests on. Of an unknown fact at least
	// one of Missing and Because is there.
	Because string
	// Assumed holds the ids of facts that rest on a documented default or on
	// a constant, and that this fact rests on.
	Assumed []string
	// AtLeast is a lower bound, in SI, of a fact that is unknown: what the
	// known parts of a sum or largest-of give by themselves.
	AtLeast *float64
	// Says is the fact's workings in one line: "4 x 37.4 V x (1 + 0.26 %/K x
	// 52 K), at -27 degC"; of an unknown fact whose inputs are known, why it is
	// unknown all the same. Empty where the fact has none.
	Says string
}

// Work is how a fact came about: its declaration, what it read, and where an
// attribute stands. The inputs' own Work hangs below, so that a Work is the root
// of the fact's whole worksheet; a fact that several others read is the same
// *Work in each.
type Work struct {
	Entry  *Entry
	Fact   Fact
	Inputs []*Work
	// At is the place of an attribute's value; invalid for a derived fact and
	// for an attribute that is not given.
	At source.Range
	// Note says why the fact is unknown although its inputs are known, or where
	// the figures of a known one come from.
	Note string

	subject *Subject
	value   value
	unknown bool // something that was read, or wanted, is unknown
	failed  bool // its own method has no answer
}

// value is a fact's value while it is computed. The zero value stands for
// unknown ones.
type value struct {
	number float64
	word   string
	yes    bool
	list   []float64
	over   []float64
}

// Curve is the value of a series: values over something, both in SI and as long
// as each other.
type Curve struct{ Over, Values []float64 }

// typed lists the Go types of facts' values: numbers in SI, words, yes and no,
// short lists of numbers, and series.
type typed interface {
	float64 | string | bool | []float64 | Curve
}

// subject is what facts are about. Every type of it wraps a *Subject.
type subject interface{ self() *Subject }

// Key reads one fact of one kind of subject, with the Go type of its value.
type Key[S subject, V typed] struct{ collection, name string }

// declared holds the derived facts in the order of their declaration. It is
// written while the package's variables are initialized and never after.
var declared []*Entry

// declare adds a derived fact to the table: what it is and how it follows from
// others. The formula reads other facts through their keys' Of, which records
// them; a formula that needs itself, over however many steps, is refused by the
// Go compiler as an initialization cycle.
func declare[S subject, V typed](e Entry, formula func(S, *Work) V) Key[S, V] {
	if e.Kind = kindOf[V](); e.Kind == Word {
		e.Unit = "word"
	} else if e.Kind == YesNo {
		e.Unit = "yes_no"
	}
	constant := e.Assumes != ""
	e.derive = func(s *Subject, w *Work) value {
		if constant {
			w.assume()
		}
		return wrap(formula(s.typed.(S), w))
	}
	declared = append(declared, &e)
	return Key[S, V]{e.Collection, e.Name}
}

// attribute gives the key of an attribute of the language. A test proves that
// each one exists there, with that type of value.
func attribute[S subject, V typed](collection, name string) Key[S, V] {
	handles = append(handles, handle{collection, name, kindOf[V]()})
	return Key[S, V]{collection, name}
}

// handles holds the attributes that formulas read, for the test that holds them
// against the language. It is written as declared is.
var handles []handle

type handle struct {
	collection, name string
	kind             Kind
}

func kindOf[V typed]() Kind {
	switch any(*new(V)).(type) {
	case string:
		return Word
	case bool:
		return YesNo
	case []float64:
		return List
	case Curve:
		return Series
	}
	return Quantity
}

func wrap[V typed](v V) value {
	switch v := any(v).(type) {
	case float64:
		return value{number: v}
	case string:
		return value{word: v}
	case bool:
		return value{yes: v}
	case []float64:
		return value{list: v}
	case Curve:
		return value{list: v.Values, over: v.Over}
	}
	return value{}
}

func unwrap[V typed](v value) (out V) {
	switch p := any(&out).(type) {
	case *float64:
		*p = v.number
	case *string:
		*p = v.word
	case *bool:
		*p = v.yes
	case *[]float64:
		*p = v.list
	case *Curve:
		*p = Curve{Over: v.over, Values: v.list}
	}
	return out
}

// Of reads the fact of a subject and records it as an input of w. Where it is
// unknown w becomes unknown too, and what comes back is zero, or, while a fact
// with a bound is computed, the input's own lower bound.
func (k Key[S, V]) Of(w *Work, s S) V {
	in := s.self().work(k.name)
	w.read(in)
	if in.Fact.Known {
		return unwrap[V](in.value)
	}
	if in.Fact.AtLeast != nil && w.Entry.Bound {
		return unwrap[V](value{number: *in.Fact.AtLeast})
	}
	return *new(V)
}

// Given tells whether a subject's attribute is written down, readable or not. It
// reads structure, not a value, and so records nothing.
func (k Key[S, V]) Given(s S) bool {
	own := s.self()
	_, given := own.written(own.collection.byName[k.name])
	return given
}

// Known tells whether all that was read so far is known.
func (w *Work) Known() bool { return !w.unknown }

// Say sets the one-line workings. Of a fact that turns out unknown the note stands
// there instead.
func (w *Work) Say(format string, args ...any) { w.Fact.Says = fmt.Sprintf(format, args...) }

// read records an input with what it is missing and what it assumes.
func (w *Work) read(in *Work) {
	w.unknown = w.unknown || !in.Fact.Known // also when read again: a part asks for itself
	if slices.Contains(w.Inputs, in) {
		return
	}
	w.Inputs = append(w.Inputs, in)
	because := in.Fact.Because
	if in.failed {
		because = in.Fact.ID + ": " + because // what has no answer is told by name further up
	}
	if !in.Fact.Known && w.Note == "" {
		w.Note = cmp.Or(because, in.Note) // why it is unknown is why this is
	}
	w.Fact.Because = cmp.Or(w.Fact.Because, because)
	w.Fact.Missing = union(w.Fact.Missing, in.Fact.Missing)
	w.Fact.Assumed = union(w.Fact.Assumed, in.Fact.Assumed)
}

// part computes one part, not negative, of a sum or largest-of. Where anything
// that it reads is unknown the part counts as nothing in the lower bound. Use it
// for parts that could fall when an input rises; others read their inputs
// directly.
func (w *Work) part(compute func() float64) float64 {
	before := w.unknown
	w.unknown = false
	v := compute()
	if w.unknown {
		return 0
	}
	w.unknown = before
	return v
}

// assume lists the fact itself among the assumptions.
func (w *Work) assume() { w.Fact.Assumed = union(w.Fact.Assumed, []string{w.Fact.ID}) }

// lack makes the fact unknown for want of something, named by id.
func (w *Work) lack(ids ...string) {
	w.unknown = true
	w.Fact.Missing = union(w.Fact.Missing, ids)
}

// lost makes the fact miss what was wrong with subjects that were left out.
func (w *Work) lost(ids []string) {
	if len(ids) > 0 {
		w.Note = "what it counts is not all there: a block could not be placed"
		w.lack(ids...)
	}
}

// fail makes the fact unknown although its inputs are known, and says why. There
// is nothing to supply: all that it reads is there, and gives no answer.
func (w *Work) fail(why string) {
	w.Note, w.Fact.Because = why, why
	w.unknown, w.failed = true, true
}

// roots gives the ids of the attributes that the fact rests on.
func (w *Work) roots() []string {
	var ids []string
	seen := map[*Work]bool{}
	var walk func(*Work)
	walk = func(n *Work) {
		if seen[n] {
			return
		}
		seen[n] = true
		if n != w && n.Entry.Attribute {
			ids = append(ids, n.Fact.ID)
		}
		for _, in := range n.Inputs {
			walk(in)
		}
	}
	walk(w)
	if len(ids) == 0 {
		ids = []string{w.subject.id}
	}
	return ids
}

// finish turns what the formula returned into the fact.
func (w *Work) finish(v value) {
	number := w.Fact.Kind == Quantity
	if w.Known() && (number && !finite(v.number) || slices.ContainsFunc(v.list, infinite) || slices.ContainsFunc(v.over, infinite)) {
		w.fail("its inputs give no finite number")
	}
	if w.Known() {
		w.value, w.Fact.Known, w.Fact.Missing, w.Fact.Because = v, true, nil, ""
		w.Fact.SI, w.Fact.Word, w.Fact.Yes, w.Fact.List, w.Fact.Over = v.number, v.word, v.yes, v.list, v.over
		return
	}
	w.Fact.Says = w.Note
	if len(w.Fact.Missing) == 0 && w.Fact.Because == "" {
		w.Fact.Missing = w.roots()
	}
	if w.Entry.Bound && v.number > 0 && !math.IsInf(v.number, 0) {
		bound := v.number
		w.Fact.AtLeast = &bound
	}
}

func finite(v float64) bool   { return !math.IsNaN(v) && !math.IsInf(v, 0) }
func infinite(v float64) bool { return !finite(v) }

// readAttribute reads an attribute where it is written, in the named part
// behind it, or takes its documented default and lists it as assumed.
func readAttribute(s *Subject, e *Entry, w *Work) value {
	v, given := s.written(e)
	switch {
	case given && v.Bad:
		w.At = v.At
		w.lack(w.Fact.ID)
		return value{}
	case given:
		w.At = v.At
		if len(e.Units) > 0 && e.Kind == Quantity { // a reading is in the unit of what was read
			w.Fact.Unit = v.Written.Dimension.String()
		}
		return attributeValue(e.Kind, v)
	}
	if stand, ok := s.standIn(e); ok {
		w.assume()
		return stand
	}
	w.lack(w.Fact.ID)
	return value{}
}

func attributeValue(k Kind, v *design.Value) value {
	switch k {
	case Word:
		return value{word: v.Text}
	case YesNo:
		return value{yes: v.Yes}
	case List:
		return value{list: v.List}
	}
	return value{number: v.SI}
}

// Value gives a fact's value as documents carry it: a number or a list of numbers
// in the fact's unit and rounded, a word, true or false; nil where it is unknown.
func (f Fact) Value() any {
	switch {
	case !f.Known:
		return nil
	case f.Kind == Word:
		return f.Word
	case f.Kind == YesNo:
		return f.Yes
	case f.Kind == List, f.Kind == Series:
		return inUnits(f.List, f.Unit)
	}
	return InUnit(f.SI, f.Unit)
}

// InUnit gives an SI value in a document's unit, rounded as machine output is.
func InUnit(si float64, unit string) float64 {
	if u, ok := quantity.Lookup(unit); ok {
		return quantity.Round(u.FromSI(si))
	}
	return quantity.Round(si)
}

func inUnits(list []float64, unit string) []float64 {
	values := make([]float64, len(list))
	for i, si := range list {
		values[i] = InUnit(si, unit)
	}
	return values
}

// union adds those of b that a lacks, in order. What it takes over from another
// fact has no room behind its end, so that adding to it copies it first: room
// there is always the fact's own.
func union(a, b []string) []string {
	if len(a) == 0 {
		return slices.Clip(b)
	}
	for _, id := range b {
		if !slices.Contains(a, id) {
			a = append(a, id)
		}
	}
	return a
}
