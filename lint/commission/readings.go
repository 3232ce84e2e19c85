package commission

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// What the design records, and what it comes to.

// recorded lists the design's readings by what they are of, as it lists them.
func (p *planner) recorded() map[string][]*facts.Subject {
	p.used = map[string]bool{}
	all := map[string][]*facts.Subject{}
	for _, r := range p.s.Subjects("readings") {
		if of := p.word(r.ID() + ".of"); of != "" {
			all[of] = append(all[of], r)
		}
	}
	return all
}

// leftovers gives a line of their own to readings that no line asked for: what
// was measured is never dropped.
func (p *planner) leftovers() {
	for _, r := range p.s.Subjects("readings") {
		of := p.word(r.ID() + ".of")
		if p.used[r.ID()] || of == "" {
			continue
		}
		about, q, _ := splitOf(of)
		key := Live
		if q == "voc" || q == "isc" {
			key = Strings
		}
		i := slices.IndexFunc(p.plan.Sections, func(s Section) bool { return s.Key == key })
		p.measure(&p.plan.Sections[i], about, of, 0, capital(quantities[q])+" as recorded.")
	}
}

// measure adds a reading box for something that the design can record.
func (p *planner) measure(s *Section, about, of string, due int, says string) *Line {
	_, q, each := splitOf(of)
	what := q
	if each {
		what = "each." + q
	}
	l := p.line(s, Measure, about, what, says)
	l.Of, l.Due, l.Expect = of, due, p.due(of, p.moment())
	l.Unit = unitOf(q)
	for _, r := range p.readings[of] {
		p.used[r.ID()] = true
		l.Readings = append(l.Readings, p.reading(r, of))
	}
	l.Remains = max(0, due-len(l.Readings))
	l.State, l.Because = stateOf(l)
	return l
}

// byHand adds a reading box for something that the design has no place for.
func (p *planner) byHand(s *Section, about, what, unit string, due int, says string, expect ...Expected) *Line {
	l := p.line(s, Measure, about, what, says)
	l.Unit, l.Due, l.Remains, l.Expect, l.State = unit, due, due, expect, ByHand
	return l
}

// apart adds a line that is judged on the readings of others: how far they are
// from each other. wanted is how many there are to be.
func (p *planner) apart(s *Section, about, what string, of []string, wanted int, by facts.Spread, says string, limit Expected) *Line {
	l := p.line(s, Measure, about, what, says)
	l.Unit, l.Expect, l.State = limit.Unit, []Expected{limit}, NotMeasured
	var readings []string
	for _, one := range of {
		readings = append(readings, ids(p.readings[one])...)
	}
	w, ok := p.s.Apart(about, readings, by)
	if !ok {
		return l
	}
	l.Found = inUnit(w.Fact.SI, w.Fact.Unit)
	switch holds, known := limit.holds(*l.Found); {
	case !known:
		l.State, l.Because = Unproven, "nobody knows how far apart they may be"
	case !holds:
		l.State = OutOfBand
		l.Because = fmt.Sprintf("%s apart, %s allowed", quantity.Format(w.Fact.SI, w.Fact.Unit), show(*limit.Value, limit.Unit))
	case len(readings) >= wanted:
		l.State = InBand
	}
	return l
}

func unitOf(q string) string {
	switch q {
	case "voc", "vmp", "voltage":
		return "V"
	case "isc", "imp", "current":
		return "A"
	}
	return "W"
}

// stateOf sums up the readings of a line, the worst first.
func stateOf(l *Line) (state, because string) {
	for _, worst := range []string{OutOfBand, Unproven} {
		for _, r := range l.Readings {
			if r.State == worst {
				return worst, r.ID + ": " + r.Because
			}
		}
	}
	switch {
	case l.Remains > 0 || len(l.Readings) == 0:
		return NotMeasured, ""
	case slices.ContainsFunc(l.Readings, func(r Reading) bool { return r.State == Waived }):
		return Waived, ""
	}
	return InBand, ""
}

// reading judges one recorded reading at its own light and warmth.
func (p *planner) reading(r *facts.Subject, of string) Reading {
	id := r.ID()
	_, q, _ := splitOf(of)
	out := Reading{ID: id, Title: p.word(id + ".title"), Taken: p.word(id + ".taken"), Of: of, Unit: unitOf(q), State: InBand}
	if at := p.s.At(id); len(at) > 0 {
		out.At = at[0]
	} else {
		out.At = source.Range{}
	}
	var now facts.Now
	if f, ok := p.fact(id + ".cell_temperature"); ok {
		now.Cell, out.CellTemperature = &f.SI, inUnit(f.SI, "degC")
	}
	if f, ok := p.fact(id + ".irradiance"); ok {
		now.Irradiance, out.Irradiance = &f.SI, inUnit(f.SI, "W/m2")
	}
	value, ok := p.s.Fact(id + ".value")
	if !ok || !value.Known {
		out.State, out.Because, out.Missing = Unproven, "its value is not known", value.Missing
		return out
	}
	out.Value = inUnit(value.SI, out.Unit)
	// The light was written and could not be read: that is not "without light".
	if p.given(id+".irradiance") && now.Irradiance == nil || p.given(id+".cell_temperature") && now.Cell == nil {
		out.State, out.Because, out.Missing = Unproven, "its light or warmth could not be read", []string{id + ".irradiance", id + ".cell_temperature"}
		return out
	}
	if now.Irradiance != nil && *now.Irradiance < dusk && inLight(of) {
		out.State, out.Because, out.Missing = Unproven, "its light is too faint to judge by", []string{id + ".irradiance"}
		return out
	}
	p.hold(&out, p.due(of, now))
	p.holdCold(&out, id, of)
	if out.State == OutOfBand && p.waived(id) {
		out.State = Waived
	}
	return out
}

// inLight tells whether what a reading is of hangs on the light.
func inLight(of string) bool {
	kind, _, _ := strings.Cut(of, ".")
	_, q, _ := splitOf(of)
	return slices.Contains([]string{"string", "array", "pv_input"}, kind) || kind == "charger" && q != "voltage"
}

// hold puts a reading against what was due. A limit that is passed tells even
// where another one is unknown.
func (p *planner) hold(r *Reading, due []Expected) {
	for _, e := range due {
		holds, known := e.holds(*r.Value)
		switch {
		case !known && r.State == InBand:
			r.State, r.Because = Unproven, "what was due is not known"
			r.Missing = missingOf(r.ID, e.Missing)
			switch {
			case e.Supply != "":
				r.Because = e.Supply
			case len(e.Missing) == 0 && e.Says != "": // the method has no answer
				r.Because += ": " + e.Says
			}
		case known && !holds && r.State != OutOfBand:
			r.State, r.Because, r.Missing = OutOfBand, past(*r.Value, r.Unit, &e), nil
		}
		switch e.Relation {
		case Between:
			r.Expected, r.Low, r.High, r.Tolerance = e.Value, e.Low, e.High, e.Tolerance
			if e.Value != nil && *e.Value != 0 {
				share := (*r.Value - *e.Value) / *e.Value
				r.Difference = &share
			}
		case AtMost:
			if r.High == nil || e.Value != nil && *e.Value < *r.High {
				r.High = e.Value
			}
		case AtLeast:
			if r.Low == nil || e.Value != nil && *e.Value > *r.Low {
				r.Low = e.Value
			}
		}
	}
}

// holdCold puts an open-circuit voltage, carried to the coldest morning, against
// what the controller bears.
func (p *planner) holdCold(r *Reading, id, of string) {
	about, q, _ := splitOf(of)
	cold, ok := p.fact(id + ".at_cold")
	subject, there := p.s.Subject(about)
	if q != "voc" || !ok || !there {
		return
	}
	r.AtCold = inUnit(cold.SI, "V")
	input := subject
	if linked := subject.Linked("pv_input"); len(linked) > 0 {
		input = linked[0]
	}
	limit := p.most("controller's PV voltage", input.Linked("controller")[0].ID()+".pv_voltage_max")
	r.Limit = limit.Value
	if holds, known := limit.holds(*r.AtCold); known && !holds {
		r.State, r.Missing = OutOfBand, nil
		r.Because = fmt.Sprintf("it comes to %s on the coldest morning, and the controller bears %s", show(*r.AtCold, "V"), show(*limit.Value, "V"))
	}
}

// waived tells whether a waiver permits a reading to be off.
func (p *planner) waived(id string) bool {
	return slices.ContainsFunc(p.d.Verdicts, func(v verdict.Verdict) bool {
		return v.Rule == "practice.reading" && v.About == id && v.Outcome == verdict.Waived
	})
}

// missingOf says the conditions that a recorded reading lacks by its own ids.
func missingOf(id string, missing []string) []string {
	out := make([]string, len(missing))
	for i, m := range missing {
		switch m {
		case facts.NowCell:
			m = id + ".cell_temperature"
		case facts.NowIrradiance:
			m = id + ".irradiance"
		}
		out[i] = m
	}
	return out
}

// past says how a value misses what was expected.
func past(value float64, unit string, e *Expected) string {
	switch e.Relation {
	case AtMost:
		return fmt.Sprintf("%s is above %s (%s)", show(value, unit), show(*e.Value, e.Unit), e.Name)
	case AtLeast:
		return fmt.Sprintf("%s is below %s (%s)", show(value, unit), show(*e.Value, e.Unit), e.Name)
	}
	side := "above"
	if value < *e.Low {
		side = "below"
	}
	if *e.Value == 0 {
		return fmt.Sprintf("%s, and %s was due", show(value, unit), show(*e.Value, e.Unit))
	}
	share := strconv.FormatFloat(math.Abs(100*(value / *e.Value - 1)), 'f', 1, 64)
	return fmt.Sprintf("%s is %s %% %s what was due, %s, and past its band of %s to %s", show(value, unit), share, side, show(*e.Value, e.Unit), show(*e.Low, e.Unit), show(*e.High, e.Unit))
}

// show writes a value in a document's unit for people.
func show(value float64, unit string) string {
	if u, ok := quantity.Lookup(unit); ok {
		return quantity.Format(u.ToSI(value), unit)
	}
	return strings.TrimSpace(strconv.FormatFloat(value, 'g', 4, 64) + " " + unit)
}

func capital(text string) string {
	if text == "" {
		return ""
	}
	return strings.ToUpper(text[:1]) + text[1:]
}
