package judge

import (
	"encoding/binary"
	"math"

	"stringline/schema/source"
)

// shelf keeps one formula of each kind that a codebook's records hold for one
// structure. Rules that share a function ask for the same ampacity dozens of
// times; one tree stands for all of them, and is computed once a design.
type shelf struct {
	formulas map[formulaKey]*formula // nil once the records are read: it is far larger than they
	count    int
}

// formulaKey tells formulas apart: all that a formula is, its operands by their
// places. Calls at different places stay apart, since faults name theirs.
type formulaKey struct {
	op, id, text string
	at           source.Range
	number       uint64 // bits: -0 and 0 are shown differently
	yes          bool
	table        *table
	of           string
}

func newShelf() *shelf { return &shelf{formulas: map[formulaKey]*formula{}} }

// one gives the formula that stands for f. Its operands must have been put here
// before it; one that was not, or that holds choices, stays by itself.
func (s *shelf) one(f *formula) *formula {
	if s == nil || s.formulas == nil || len(f.choices) > 0 {
		return f
	}
	key := formulaKey{op: f.op, id: f.id, text: f.text, at: f.at, number: math.Float64bits(f.number), yes: f.yes, table: f.table}
	if len(f.of) > 0 {
		places := make([]byte, 0, 4*len(f.of))
		for _, x := range f.of {
			if x.place == 0 {
				return f
			}
			places = binary.AppendUvarint(places, uint64(x.place))
		}
		key.of = string(places)
	}
	if known := s.formulas[key]; known != nil {
		return known
	}
	s.count++
	f.place = s.count
	s.formulas[key] = f
	return f
}

// close ends the filling; what stands on the shelf keeps its place.
func (s *shelf) close() { s.formulas = nil }

// size is how many formulas stand on the shelf.
func (s *shelf) size() int {
	if s == nil {
		return 0
	}
	return s.count
}

// keeping are the values of one design with what the formulas of one shelf came
// to, each computed when first asked for. It serves one goroutine.
type keeping struct {
	values
	results []*result // by the formula's place less one
}

// result is what a formula came to.
type result struct {
	value value
	wrong *fault
}

func keep(vs values, s *shelf) *keeping {
	return &keeping{values: vs, results: make([]*result, s.size())}
}

// evaluate computes a formula over the values of one design, see [formula.compute].
// Values that keep what they came to give it again.
func (f *formula) evaluate(vs values) (value, *fault) {
	k, ok := vs.(*keeping)
	if !ok || f.place == 0 {
		return f.compute(vs)
	}
	r := k.results[f.place-1]
	if r == nil {
		r = &result{}
		r.value, r.wrong = f.compute(vs)
		k.results[f.place-1] = r
	}
	return r.value, r.wrong
}
