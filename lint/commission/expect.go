package commission

import (
	"stringline/lint/facts"
)

// fact gives a fact; ok is false where there is none or it is unknown.
func (p *planner) fact(id string) (facts.Fact, bool) {
	f, ok := p.s.Fact(id)
	return f, ok && f.Known
}

// count gives a fact that is a count, 0 where it is unknown.
func (p *planner) count(id string) int {
	f, _ := p.fact(id)
	return int(f.SI)
}

// yes tells whether a fact is known to be true, no whether it is known to be false.
func (p *planner) yes(id string) bool {
	f, ok := p.fact(id)
	return ok && f.Yes
}

func (p *planner) no(id string) bool {
	f, ok := p.fact(id)
	return ok && !f.Yes
}

// word gives a fact that is a word, "" where it is unknown.
func (p *planner) word(id string) string {
	f, _ := p.fact(id)
	return f.Word
}

// given tells whether an attribute is written, readable or not, or has a
// documented default.
func (p *planner) given(id string) bool {
	w, ok := p.s.Work(id)
	return ok && (w.Fact.Known || w.At.Valid())
}

// expect holds what is found against a fact of the design.
func (p *planner) expect(name, relation, id string) Expected {
	w, ok := p.s.Work(id)
	if !ok { // a subject without such a fact: nothing tells it
		return Expected{Name: name, Relation: relation, Supply: name}
	}
	return expectWork(name, relation, w)
}

// equal, most and least are expect with their relation.
func (p *planner) equal(name, id string) Expected { return p.expect(name, Equals, id) }
func (p *planner) most(name, id string) Expected  { return p.expect(name, AtMost, id) }
func (p *planner) least(name, id string) Expected { return p.expect(name, AtLeast, id) }

func expectWork(name, relation string, w *facts.Work) Expected {
	f := &w.Fact
	e := Expected{ID: f.ID, Name: name, Relation: relation, Unit: f.Unit, Says: f.Says, Missing: f.Missing, Assumed: f.Assumed}
	if !w.Entry.Attribute {
		e.Source = w.Entry.Source
	}
	switch {
	case !f.Known:
	case f.Kind == facts.Word:
		e.Word = f.Word
	case f.Kind == facts.YesNo:
		yes := f.Yes
		e.Yes = &yes
	case f.Kind == facts.Quantity:
		e.Value = inUnit(f.SI, f.Unit)
	}
	return e
}

// band puts a band of a share about what is expected.
func (e Expected) band(share float64, source string) Expected {
	e.Relation, e.Tolerance = Between, &share
	if source != "" {
		e.Source = source
	}
	if e.Value != nil {
		low, high := *e.Value*(1-share), *e.Value*(1+share)
		e.Low, e.High = &low, &high
	}
	return e
}

// byMaker is a figure that no fact tells: the design has no place for it.
func byMaker(name, unit, supply string) Expected {
	return Expected{Name: name, Relation: Equals, Unit: unit, Supply: supply}
}

// figure is one of common practice or of a standard that hangs on nothing in the
// design.
func figure(name, relation string, value float64, unit, source string) Expected {
	return Expected{Name: name, Relation: relation, Value: &value, Unit: unit, Source: source}
}

// holds tells whether a value lies where it is expected. ok is false where that
// is unknown.
func (e *Expected) holds(value float64) (holds, ok bool) {
	apart := func(limit float64) float64 { return slack * max(abs(limit), abs(value)) }
	switch {
	case e.Relation == Between && e.Low != nil && e.High != nil:
		return value >= *e.Low-apart(*e.Low) && value <= *e.High+apart(*e.High), true
	case e.Value == nil:
		return false, false
	case e.Relation == AtMost:
		return value <= *e.Value+apart(*e.Value), true
	case e.Relation == AtLeast:
		return value >= *e.Value-apart(*e.Value), true
	}
	return abs(value-*e.Value) <= apart(*e.Value), true
}

func abs(x float64) float64 {
	if x < 0 {
		return -x
	}
	return x
}
