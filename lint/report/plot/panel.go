package plot

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"stringline/lint/facts"
	"stringline/schema/quantity"
)

// panel is one frame with its axes. Values go in in SI and are drawn in units.
type panel struct {
	f           *figure
	top, height float64
	x, y        axis
}

// axis maps values in a unit to a stretch of the paper.
type axis struct {
	unit     string
	begin    float64 // where it begins, in the unit: nought but in sweeps
	end      float64 // where it ends
	step     float64 // between ticks
	from, to float64 // on the paper
}

// axisTo makes an axis from nought that holds a value, with so many steps or
// about that.
func axisTo(most float64, unit string, steps int) axis {
	a := axis{unit: unit}
	if !(most > 0) {
		most = 1
	}
	size := math.Pow(10, math.Floor(math.Log10(most/float64(steps))))
	for _, times := range []float64{1, 2, 5, 10} {
		if a.step = times * size; a.step*float64(steps) >= most {
			break
		}
	}
	a.end = math.Ceil(most/(a.step/2)-1e-9) * a.step / 2
	return a
}

// at gives the place of an SI value.
func (a *axis) at(si float64) float64 { return a.place(inUnit(si, a.unit)) }

func (a *axis) place(value float64) float64 {
	return a.from + (value-a.begin)/(a.end-a.begin)*(a.to-a.from)
}

// inUnit gives an SI value in an axis' unit.
func inUnit(si float64, unit string) float64 {
	if u, ok := quantity.Lookup(unit); ok {
		return u.FromSI(si)
	}
	return si
}

// ticks lists the values that carry a number.
func (a *axis) ticks() []float64 {
	var all []float64
	for n := 0; a.begin+float64(n)*a.step <= a.end+1e-9*a.step; n++ {
		all = append(all, a.begin+float64(n)*a.step)
	}
	return all
}

// panel opens a frame below what is drawn. What stands beside the paths says how
// to read values off the paper: the axes' ends and where they lie.
func (f *figure) panel(kind string, height float64, x, y axis) *panel {
	p := &panel{f: f, top: f.y, height: height, x: x, y: y}
	p.x.from, p.x.to = left, right
	p.y.from, p.y.to = p.top+height, p.top
	begins := ""
	if x.begin != 0 || y.begin != 0 {
		begins = fmt.Sprintf(` data-x-begin="%s" data-y-begin="%s"`, exact(x.begin), exact(y.begin))
	}
	f.put(`<g data-panel="%s" data-x-unit="%s" data-y-unit="%s"%s data-x-end="%s" data-y-end="%s" data-left="%s" data-right="%s" data-bottom="%s" data-top="%s">`,
		kind, escape(x.unit), escape(y.unit), begins, exact(x.end), exact(y.end), num(left), num(right), num(p.y.from), num(p.y.to))
	f.y += height
	return p
}

func exact(v float64) string { return strconv.FormatFloat(quantity.Round(v), 'g', -1, 64) }

// grid draws the frame, its ticks and numbers. Numbers of the x axis stand below
// where below is set.
func (p *panel) grid(below bool) {
	var d strings.Builder
	for _, v := range p.y.ticks() {
		y := p.y.place(v)
		fmt.Fprintf(&d, "M%s %sH%s", num(left), num(y), num(right))
		p.f.text(left-4, y+3.6, "minor", "end", exact(v))
	}
	for _, v := range p.x.ticks() {
		x := p.x.place(v)
		fmt.Fprintf(&d, "M%s %sV%s", num(x), num(p.top), num(p.top+p.height))
		if below {
			p.f.text(x, p.top+p.height+13, "minor", "middle", exact(v))
		}
	}
	p.f.put(`<path class="grid" d="%s"/>`, d.String())
	p.f.put(`<path class="axis" d="M%s %sV%sH%s"/>`, num(left), num(p.top), num(p.top+p.height), num(right))
	if below {
		p.f.y += 16
	}
}

// end closes the panel.
func (p *panel) end() { p.f.put("</g>") }

// curve draws a series with its numbers beside it. name tells it from others in
// its panel, class how it is dashed.
func (p *panel) curve(name, class string, fact *facts.Fact) {
	p.f.put(`<path class="line %s" data-curve="%s" data-fact="%s" data-x="%s" data-y="%s" d="%s"/>`, class, name, escape(fact.ID),
		plain(fact.Over, p.x.unit), plain(fact.List, p.y.unit), p.way(fact.Over, fact.List))
}

// way is the path through points in SI.
func (p *panel) way(x, y []float64) string {
	var d strings.Builder
	for n := range x {
		letter := "L"
		if n == 0 {
			letter = "M"
		}
		fmt.Fprintf(&d, "%s%s %s", letter, num(p.x.at(x[n])), num(p.y.at(y[n])))
	}
	return d.String()
}

// mark draws a small circle at a point of a curve.
func (p *panel) mark(what, curve string, x, y float64, class string) {
	p.f.put(`<circle class="mark %s" data-mark="%s" data-of="%s" data-x="%s" data-y="%s" cx="%s" cy="%s" r="2.6"/>`, class, what, curve,
		plain([]float64{x}, p.x.unit), plain([]float64{y}, p.y.unit), num(p.x.at(x)), num(p.y.at(y)))
}

// crossing gives where a falling curve comes down to a value of y, on the paper.
func (p *panel) crossing(fact *facts.Fact, y float64) (x float64, ok bool) {
	for n := len(fact.List) - 1; n > 0; n-- {
		low, high := fact.List[n], fact.List[n-1]
		if low <= y && high >= y && high > low {
			over := fact.Over[n] + (y-low)/(high-low)*(fact.Over[n-1]-fact.Over[n])
			return p.x.at(over), true
		}
	}
	return 0, false
}

// peak gives the place of a series' largest value.
func peak(fact *facts.Fact) int {
	return slices.Index(fact.List, slices.Max(fact.List))
}
