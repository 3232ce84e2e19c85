package plot

import (
	"cmp"
	"math"
	"slices"

	"stringline/lint/facts"
)

// Words in the picture of an input's curves: where they can stand.

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
