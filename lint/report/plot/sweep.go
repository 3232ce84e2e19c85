package plot

import (
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"

	"stringline/lint/report"
	"stringline/lint/sweep"
)

// Bounds of the picture of a sweep.
const (
	sweepPanels = 6 // facts
	sweepLines  = 4 // values of the second axis
	sweepHeight = 120.0
)

// dashes tell lines of one panel apart without color.
var dashes = []string{"", "dash", "dots", "chain"}

// Sweep writes a sweep as an SVG file that is complete by itself: one panel a fact
// over the first axis, one line for each value of the second (four at most, evenly
// chosen), the limit where a rule sets one, and a mark where that rule turns. The
// first axis must have values in order.
func Sweep(w io.Writer, r *sweep.Result) error {
	a := r.Axes[0]
	first, last := a.Points[0].Value, a.Points[len(a.Points)-1].Value
	if !a.Number() || len(a.Points) < 2 || last <= first {
		return fmt.Errorf("drawing a sweep: %s has no values in rising order to draw over", a.ID)
	}
	f := newFigure("sweep."+a.ID, true)
	title := fmt.Sprintf("%s: sweep of %s", r.Base.Name, a.ID)
	if len(r.Axes) == 2 {
		title += " and " + r.Axes[1].ID
	}
	f.called(title)
	f.say("%s from %s to %s.", a.ID, a.Points[0].Text, a.Points[len(a.Points)-1].Text)
	for i := range r.Turns {
		f.say("%s on %s: %s.", r.Turns[i].Rule, r.Turns[i].About, report.TurnText(r, &r.Turns[i]))
	}
	if len(r.Axes) == 2 {
		f.paragraph("minor", "Beside each line its "+r.Axes[1].ID+".")
	}
	drawn := 0
	for _, c := range r.Facts {
		if drawn == sweepPanels {
			break
		}
		if f.sweepPanel(r, &c) {
			drawn++
		}
	}
	if left := len(r.Facts) - drawn; left > 0 {
		f.paragraph("minor", fmt.Sprintf("%d more that move are not drawn; --facts chooses.", left))
	}
	if drawn == 0 {
		f.paragraph("supply", "Nothing that is limited moves in numbers.")
	}
	_, err := io.WriteString(w, f.svg())
	return err
}

// sweepPanel draws one fact; false where it has no number at any point.
func (f *figure) sweepPanel(r *sweep.Result, c *sweep.Column) bool {
	a := r.Axes[0]
	n := len(a.Points)
	lines := chosenLines(r)
	low, high := math.Inf(1), math.Inf(-1)
	number := func(row *sweep.Row) float64 {
		if v, ok := row.Number(c.ID); ok {
			return v
		}
		return math.NaN()
	}
	for _, j := range lines {
		for i := range n {
			row := &r.Rows[j*n+i]
			if v := number(row); !math.IsNaN(v) {
				low, high = min(low, v), max(high, v)
			}
			if v, ok := row.Limits[c.ID]; ok {
				low, high = min(low, v), max(high, v)
			}
		}
	}
	if low > high {
		return false
	}
	f.y += 4
	f.paragraph("head", c.ID)
	f.paragraph("minor", c.Means+unitWords(c.Unit))
	f.y += 8
	p := f.panel("sweep", sweepHeight, axisBetween(a.Points[0].Value, a.Points[n-1].Value, a.Unit, 6), axisBetween(low, high, c.Unit, 4))
	p.grid(true)
	for k, j := range lines {
		p.sweepLine(r, c, j, dashes[k%len(dashes)], len(lines) > 1)
	}
	limit, limited := make([]float64, n), true
	for i := range n {
		v, ok := r.Rows[lines[0]*n+i].Limits[c.ID]
		limit[i], limited = v, limited && ok
	}
	if limited {
		p.f.put(`<path class="limit" data-curve="limit" data-fact="%s" data-x="%s" data-y="%s" d="%s"/>`, escape(c.ID), pointNumbers(a), numbers(limit), p.wayOf(a, limit))
		y := p.y.place(limit[n-1]) - 4
		if y < p.top+10 { // no room above it
			y += 16
		}
		p.f.text(left+3, y, "halo", "start", "limit")
		p.f.text(left+3, y, "", "start", "limit")
	}
	marks := 0
	for i := range r.Turns {
		if p.sweepTurn(r, c, &r.Turns[i], lines, marks) {
			marks++
		}
	}
	f.y += lineGap
	f.text(right, f.y, "minor", "end", a.ID+unitWords(a.Unit))
	p.end()
	return true
}

func unitWords(unit string) string {
	if unit == "" {
		return ""
	}
	return ", in " + unit
}

// chosenLines picks points of the second axis to draw, both ends among them.
func chosenLines(r *sweep.Result) []int {
	if len(r.Axes) == 1 {
		return []int{0}
	}
	n := len(r.Axes[1].Points)
	k := min(n, sweepLines)
	if k == 1 {
		return []int{0}
	}
	lines := make([]int, k)
	for i := range k {
		lines[i] = i * (n - 1) / (k - 1)
	}
	return lines
}

// sweepLine draws the values at one point of the second axis, with gaps where they
// are unknown.
func (p *panel) sweepLine(r *sweep.Result, c *sweep.Column, j int, class string, labelled bool) {
	a := r.Axes[0]
	n := len(a.Points)
	values := make([]float64, n)
	var x, y float64
	for i := range n {
		v, ok := r.Rows[j*n+i].Number(c.ID)
		if values[i] = math.NaN(); ok {
			values[i] = v
			x, y = p.x.place(a.Points[i].Value), p.y.place(v)
		}
	}
	name := "value"
	if labelled {
		name = r.Axes[1].Points[j].Text
	}
	p.f.put(`<path class="line %s" data-curve="%s" data-fact="%s" data-x="%s" data-y="%s" d="%s"/>`, class, escape(name), escape(c.ID), pointNumbers(a), numbers(values), p.wayOf(a, values))
	if labelled && x > 0 {
		p.f.text(x-3, y-4, "halo", "end", name)
		p.f.text(x-3, y-4, "", "end", name)
	}
}

// sweepTurn marks where a rule on this fact's subject turns: a line down the panel
// of the fact that the rule limits. Of several marks the words stand below each
// other.
func (p *panel) sweepTurn(r *sweep.Result, c *sweep.Column, t *sweep.Turn, lines []int, before int) bool {
	a := r.Axes[0]
	if t.Axis != 0 || t.Limited != c.ID || !a.Between || t.Other >= 0 && !slices.Contains(lines, t.Other) {
		return false
	}
	value := t.Met().Value
	x := p.x.place(value)
	p.f.put(`<path class="line bound past" data-turn="%s" data-x="%s" d="M%s %sV%s"/>`, escape(t.Key()), exact(value), num(x), num(p.top), num(p.top+p.height))
	anchor, at := "start", x+3
	if x > (left+right)/2 {
		anchor, at = "end", x-3
	}
	words, _, _ := strings.Cut(report.TurnAlong(a, t), ",")
	if t.Other >= 0 {
		words = r.Axes[1].Points[t.Other].Text + ": " + words
	}
	y := p.top + 11 + 13*float64(before)
	p.f.text(at, y, "halo", anchor, words)
	p.f.text(at, y, "", anchor, words)
	return true
}

// wayOf is the path through a series over the points of an axis.
func (p *panel) wayOf(a *sweep.Axis, values []float64) string {
	var d strings.Builder
	letter := "M"
	for i, v := range values {
		if math.IsNaN(v) {
			letter = "M"
			continue
		}
		fmt.Fprintf(&d, "%s%s %s", letter, num(p.x.place(a.Points[i].Value)), num(p.y.place(v)))
		letter = "L"
	}
	return d.String()
}

func pointNumbers(a *sweep.Axis) string {
	values := make([]float64, len(a.Points))
	for i, p := range a.Points {
		values[i] = p.Value
	}
	return numbers(values)
}

// numbers writes values as they stand beside a path; one that is unknown is -.
func numbers(values []float64) string {
	texts := make([]string, len(values))
	for i, v := range values {
		if texts[i] = "-"; !math.IsNaN(v) {
			texts[i] = strconv.FormatFloat(v, 'g', 9, 64)
		}
	}
	return strings.Join(texts, " ")
}

// axisBetween makes an axis that holds two values, on round numbers.
func axisBetween(low, high float64, unit string, steps int) axis {
	if !(high > low) {
		low, high = low-math.Max(math.Abs(low)*0.05, 0.5), high+math.Max(math.Abs(high)*0.05, 0.5)
	}
	a := axisTo(high-low, unit, steps)
	a.begin = math.Floor(low/a.step+1e-9) * a.step
	a.end = math.Ceil(high/a.step-1e-9) * a.step
	return a
}
