package plot

import (
	"cmp"
	"math"
	"slices"

	"stringline/lint/facts"
)

// One state of the cells that curves are drawn for.
type state struct {
	name, class   string
	cell          string // fact that gives its temperature; "" for 25 degC
	most, voltage string // facts of the maximum
	short         string // at the line
	iv, pv        facts.Fact
}

func statesOf(s *facts.System, in *facts.Subject) []*state {
	all := []*state{
		{name: "cold", class: "dash", cell: ".cell_cold", most: ".mpp_cold", voltage: ".vmp_cold", short: "cold"},
		{name: "standard", class: "solid", most: ".mpp_stc", voltage: ".vmp_stc", short: "25 °C"},
		{name: "hot", class: "dots", cell: ".cell_hot", most: ".mpp_hot", voltage: ".vmp_hot", short: "hot"},
	}
	for _, st := range all {
		st.iv, _ = s.Fact(in.ID() + ".curve_" + st.name)
		st.pv, _ = s.Fact(in.ID() + ".power_" + st.name)
	}
	return all
}

func (st *state) drawn() bool { return st.iv.Known && st.pv.Known && len(st.iv.List) > 1 }

// cells says how warm the cells are.
func (st *state) cells(s *facts.System, in *facts.Subject) string {
	if st.cell == "" {
		return "25 °C"
	}
	return figures(s, in.ID()+st.cell)
}

// Heights of the panels.
const (
	currentHeight = 170
	powerHeight   = 150
)

// offScale is how many times what is drawn a limit may be before it is told in
// words instead: a curve must not shrink into the corner.
const offScale = 2.5

// curves draws current and power over voltage of a controller input.
func curves(s *facts.System, in *facts.Subject, f *figure) *figure {
	id, controller := in.ID(), in.Linked("controller")[0].ID()
	f.called(id + ": current and power over voltage at 1000 W/m²")
	f.say("Current and power over voltage of %s at 1000 W/m², with cold cells, cells of 25 °C and hot cells.", id)
	f.heads = []string{"At 1000 W/m²"}
	f.rows = []Row{{Head: "Cells"}, {Head: "Open circuit"}, {Head: "Short circuit"}, {Head: "Maximum"}, {Head: "Voltage there"}, {Head: "Current there"}}
	states := statesOf(s, in)
	volts, amperes, watts := 0.0, 0.0, 0.0
	for _, st := range states {
		open, short, current := "_____ V", "_____ A", "_____ A"
		most, voltage := figures(s, id+st.most), figures(s, id+st.voltage)
		if st.drawn() {
			last, best := len(st.iv.List)-1, peak(&st.pv)
			volts, amperes, watts = max(volts, st.iv.Over[last]), max(amperes, st.iv.List[0]), max(watts, st.pv.List[best])
			open, short, current = show(st.iv.Over[last], "V"), show(st.iv.List[0], "A"), show(st.iv.List[best], "A")
			f.say("%s, %s: open circuit %s, short circuit %s, maximum %s at %s.", st.name, st.cells(s, in), open, short, most, voltage)
		}
		f.heads = append(f.heads, st.name)
		for n, value := range []string{st.cells(s, in), open, short, most, voltage, current} {
			f.rows[n].Values = append(f.rows[n].Values, value)
		}
	}
	limits := limitsOf(s, id, controller)
	if judged, ok := known(s, id+".voc_cold"); ok {
		volts = max(volts, judged)
	}
	if volts > 0 {
		drawCurves(s, f, in, states, limits, volts, amperes, watts)
	} else {
		f.y += 4
	}
	for _, words := range limits.words {
		f.say("%s.", words)
	}
	for _, st := range states {
		if !st.drawn() {
			f.supply(st.name+" curve", &st.iv)
		}
	}
	return f
}

// limits are what a controller's data sheet allows an input.
type limits struct {
	voltage, low, high      facts.Fact // limit, window
	current, short, power   facts.Fact
	judged                  facts.Fact // open-circuit voltage on the coldest morning
	words                   []string
	voltageSeen, windowSeen bool
}

func limitsOf(s *facts.System, input, controller string) *limits {
	l := &limits{}
	for _, one := range []struct {
		into      *facts.Fact
		id, words string
	}{
		{&l.voltage, controller + ".pv_voltage_max", "The controller's limit, above which it is destroyed, is "},
		{&l.low, controller + ".mppt_voltage_min", "It tracks from "},
		{&l.high, controller + ".mppt_voltage_max", "It tracks up to "},
		{&l.current, controller + ".pv_current_max", "It uses an operating current up to "},
		{&l.short, controller + ".pv_short_circuit_max", "A short-circuit current damages it above "},
		{&l.power, controller + ".pv_power_max", "It is made for a PV power up to "},
		{&l.judged, input + ".voc_cold", "On the coldest morning the data sheet's coefficient gives an open circuit of "},
	} {
		*one.into, _ = s.Fact(one.id)
		l.words = append(l.words, one.words+figures(s, one.id))
	}
	return l
}

func drawCurves(s *facts.System, f *figure, in *facts.Subject, states []*state, l *limits, volts, amperes, watts float64) {
	x := axisTo(reach(volts, &l.voltage, &l.high)*1.02, "V", 6)
	shown := func(fact *facts.Fact, most float64) bool { return fact.Known && fact.SI <= most*offScale }
	// Above the frame: the limit, then the window.
	f.y += 14
	past := l.voltage.Known && l.judged.Known && l.judged.SI > l.voltage.SI
	lines := axis{unit: "V", end: x.end, from: left, to: right}
	wall := 0.0 // where the limit stands, 0 for nowhere
	if l.voltage.Known && inUnit(l.voltage.SI, "V") <= x.end {
		wall = lines.at(l.voltage.SI)
	}
	switch {
	case !l.voltage.Known:
		f.text(right, f.y, "supply", "end", "limit _____ V")
	case wall > 0:
		f.text(min(wall+2, right), f.y, "head", "end", "limit "+show(l.voltage.SI, "V"))
	default:
		f.text(right, f.y, "head", "end", "limit "+show(l.voltage.SI, "V")+", off this scale")
	}
	f.y += 5
	if l.low.Known || l.high.Known {
		f.window(&lines, l)
	}
	f.y += 6
	top := f.y
	before := f.b.String()
	f.b.Reset()
	f.text(6, top-7, "minor", "start", "A")

	current := amperes
	for _, level := range []*facts.Fact{&l.current, &l.short} {
		if shown(level, amperes) {
			current = max(current, level.SI)
		}
	}
	p := f.panel("current", currentHeight, x, axisTo(current*1.12, "A", 5))
	p.grid(false)
	p.levels([]level{{&l.current, "chain bound limit", "used up to "}, {&l.short, "limit", "damage above "}}, amperes, states, wall)
	p.draw(states, func(st *state) *facts.Fact { return &st.iv })
	for _, st := range states {
		if st.drawn() {
			last, best := len(st.iv.List)-1, peak(&st.pv)
			p.mark("short_circuit", st.name, 0, st.iv.List[0], beyond(st.iv.List[0], &l.short))
			p.mark("maximum", st.name, st.iv.Over[best], st.iv.List[best], "")
			p.mark("open_circuit", st.name, st.iv.Over[last], st.iv.List[last], beyond(st.iv.Over[last], &l.voltage))
		}
	}
	p.edges(states)
	p.end()
	f.judged(&lines, l, past)

	f.y += 8
	f.text(6, f.y, "minor", "start", "W")
	f.y += 7
	power := watts
	if shown(&l.power, watts) {
		power = max(power, l.power.SI)
	}
	p = f.panel("power", powerHeight, x, axisTo(power*1.12, "W", 5))
	p.grid(true)
	taken := p.levels([]level{{&l.power, "chain bound limit", "made for up to "}}, watts, states, wall)
	p.draw(states, func(st *state) *facts.Fact { return &st.pv })
	for _, st := range states {
		if st.drawn() {
			best := peak(&st.pv)
			p.mark("maximum", st.name, st.pv.Over[best], st.pv.List[best], "")
		}
	}
	p.peaks(states, taken)
	p.end()
	f.y += 11
	f.text(right, f.y, "minor", "end", "voltage, V")
	// The limit runs down behind what is written.
	rest := f.b.String()
	f.b.Reset()
	f.b.WriteString(before)
	if wall > 0 {
		f.put(`<path class="limit" data-limit="%s" data-x="%s" d="M%s %sV%s"/>`, escape(l.voltage.ID), plain([]float64{l.voltage.SI}, "V"), num(wall), num(top-8), num(p.top+p.height))
	}
	f.b.WriteString(rest)
	f.key(s, in, states)
}

// beyond is the class of a mark that lies past its limit.
func beyond(si float64, limit *facts.Fact) string {
	if limit.Known && si > limit.SI {
		return "past"
	}
	return ""
}

// reach is how far the voltage axis goes: to the limit and the window where they
// are near enough, and past what is drawn.
func reach(volts float64, limits ...*facts.Fact) float64 {
	most := volts
	for _, l := range limits {
		if l.Known && l.SI <= volts*offScale {
			most = max(most, l.SI)
		}
	}
	return most
}

// window draws where the controller tracks as a bar above the frame.
func (f *figure) window(x *axis, l *limits) {
	from, to := left, right
	words := "tracks"
	if l.low.Known {
		from = min(x.at(l.low.SI), right)
		words += " from " + show(l.low.SI, "V")
	}
	if l.high.Known {
		to = min(x.at(l.high.SI), right)
		words += " to " + show(l.high.SI, "V")
	}
	f.y += 11
	f.text(max(from, left), f.y, "minor", "start", words)
	f.y += 7
	ends := ""
	if l.low.Known {
		ends = "M" + num(from) + " " + num(f.y-3) + "V" + num(f.y+3)
	}
	if l.high.Known && inUnit(l.high.SI, "V") <= x.end {
		ends += "M" + num(to) + " " + num(f.y-3) + "V" + num(f.y+3)
	}
	f.put(`<path class="axis" data-window="%s" d="M%s %sH%s%s"/>`, windowNumbers(l), num(from), num(f.y), num(to), ends)
}

func windowNumbers(l *limits) string {
	number := func(fact *facts.Fact) string {
		if fact.Known {
			return plain([]float64{fact.SI}, "V")
		}
		return "unknown"
	}
	return number(&l.low) + " " + number(&l.high)
}

// judged shows under the first frame the voltage that is held against the limit:
// it follows from the data sheet's coefficient and is a little off the curve.
func (f *figure) judged(x *axis, l *limits, past bool) {
	if !l.judged.Known {
		f.y += 14
		f.text(right, f.y, "supply", "end", "coldest open circuit _____ V")
		return
	}
	at, class, words := x.at(l.judged.SI), "mark", "halo"
	text := "coldest " + show(l.judged.SI, "V")
	if past {
		class, words, text = "mark past", "halo pastwords", text+": past the limit"
	}
	f.put(`<path class="%s" data-judged="%s" data-x="%s" d="M%s %sl4 8h-8z"/>`, class, escape(l.judged.ID), plain([]float64{l.judged.SI}, "V"), num(at), num(f.y+1))
	f.y += 12
	if at > (left+right)/2 {
		f.text(at-7, f.y-1, words, "end", text)
	} else {
		f.text(at+7, f.y-1, words, "start", text)
	}
}

// level is a line across a frame.
type level struct {
	fact         *facts.Fact
	class, words string
}

// levels draws those that lie near enough to what is drawn, each with its words,
// and gives the lines that the words stand on. Words that would meet those of the
// line above go below their own line.
//
// The words stand at the left where the curves leave room there, else at the
// right, before the limit if there is room.
func (p *panel) levels(all []level, most float64, states []*state, wall float64) (taken []float64) {
	slices.SortFunc(all, func(a, b level) int { return cmp.Compare(b.fact.SI, a.fact.SI) })
	for _, l := range all {
		if !l.fact.Known || l.fact.SI > most*offScale {
			continue
		}
		y := p.y.at(l.fact.SI)
		p.f.put(`<path class="%s" data-level="%s" data-y="%s" d="M%s %sH%s"/>`, l.class, escape(l.fact.ID), plain([]float64{l.fact.SI}, p.y.unit), num(left), num(y), num(right))
		at := y - 4
		if slices.ContainsFunc(taken, func(other float64) bool { return math.Abs(other-at) < 12 }) {
			at = y + 12
		}
		taken = append(taken, at)
		words := l.words + show(l.fact.SI, p.y.unit)
		long := float64(len(words)) * 5.6
		first, last := p.reached(states, l.fact.SI)
		switch {
		case first > left+10+long:
			p.f.text(left+5, at, "halo", "start", words)
		case wall > 0 && wall-6-long > last:
			p.f.text(wall-6, at, "halo", "end", words)
		default:
			p.f.text(right-2, at, "halo", "end", words)
		}
	}
	return taken
}

// reached gives where, on the paper, the first curve that comes up to a value
// does so, and where the last one leaves it; the right edge where none does. A
// curve of current is above a value from the axis on.
func (p *panel) reached(states []*state, si float64) (first, last float64) {
	first, last = right, left
	for _, st := range states {
		of := &st.iv
		if p.y.unit == "W" {
			of = &st.pv
		}
		for n, value := range of.List {
			if st.drawn() && value >= si {
				first, last = min(first, p.x.at(of.Over[n])), max(last, p.x.at(of.Over[n]))
			}
		}
	}
	return first, last
}

func (p *panel) draw(states []*state, of func(*state) *facts.Fact) {
	for _, st := range states {
		if st.drawn() {
			p.curve(st.name, st.class, of(st))
		}
	}
}

// edges names the curves where they fall: the last at its right, the others at
// the left of all, with a line that leads to theirs.
func (p *panel) edges(states []*state) {
	type edge struct {
		st *state
		x  float64
	}
	share := 0.5
	var all []edge
	for _, st := range states {
		if st.drawn() {
			if x, ok := p.crossing(&st.iv, st.iv.List[0]*share); ok {
				all = append(all, edge{st, x})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b edge) int { return cmp.Compare(a.x, b.x) })
	for n, e := range all {
		y := p.y.at(e.st.iv.List[0] * share)
		if n == len(all)-1 && n > 0 {
			p.f.text(e.x+5, y+4, "halo head", "start", e.st.short)
			continue
		}
		// Lower for each: a line that leads across others must be seen to do so.
		height := e.st.iv.List[0] * (0.2 + 0.25*float64(n))
		y = p.y.at(height)
		own, ok := p.crossing(&e.st.iv, height)
		first, fine := p.crossing(&all[0].st.iv, height)
		if !ok || !fine {
			continue
		}
		p.f.put(`<path class="lead" d="M%s %sH%s"/>`, num(first-8), num(y), num(own))
		p.f.text(first-10, y+4, "halo head", "end", e.st.short)
	}
}

// peaks names the curves at their maxima, at the left of them, where power has
// not risen as far yet, and clear of lines of words that are taken.
func (p *panel) peaks(states []*state, taken []float64) {
	type label struct {
		st   *state
		x, y float64
	}
	var all []label
	for _, st := range states {
		if st.drawn() {
			best := peak(&st.pv)
			all = append(all, label{st, p.x.at(st.pv.Over[best]), p.y.at(st.pv.List[best])})
		}
	}
	slices.SortStableFunc(all, func(a, b label) int { return cmp.Compare(a.y, b.y) })
	most := math.Inf(1)
	for _, l := range all {
		most = min(most, l.x)
	}
	for _, l := range all {
		y := l.y + 1
		for slices.ContainsFunc(taken, func(other float64) bool { return math.Abs(other-y) < 12.5 }) {
			y++
		}
		taken = append(taken, y)
		p.f.put(`<path class="lead" d="M%s %sL%s %s"/>`, num(most-14), num(y-4), num(l.x-2.6), num(l.y))
		p.f.text(most-16, y, "halo", "end", l.st.short+" "+show(l.st.pv.List[peak(&l.st.pv)], "W"))
	}
}

// key tells which dashes are which, with each curve's three points.
func (f *figure) key(s *facts.System, in *facts.Subject, states []*state) {
	f.y += 4
	for _, st := range states {
		if !st.drawn() {
			continue
		}
		f.y += 13
		f.put(`<path class="line %s" d="M6 %sH34"/>`, st.class, num(f.y-4))
		last, best := len(st.iv.List)-1, peak(&st.pv)
		f.text(left, f.y, "", "start", st.name+", "+st.cells(s, in)+": open "+show(st.iv.Over[last], "V")+", short "+show(st.iv.List[0], "A")+
			", "+show(st.pv.List[best], "W"))
	}
	f.y += 2
}
