package diagram

import "math"

// Distances, in units of the drawing.
const (
	margin   = 6.0
	step     = 32.0 // from a conductor to one that joins it
	toText   = 21.0 // from a conductor to its texts
	between  = 6.0  // between two rows
	joint    = 14.0 // height kept for a junction
	aside    = 8.0  // of load terminals from the conductor that goes on
	busWidth = "3.2"
)

// canvas places items and draws them. Everything moves down the page: y is where
// the next row begins.
type canvas struct {
	layout   Layout
	findings map[string][]finding
	picture
	left   float64 // of the column at work
	y      float64
	bottom float64   // of the lowest column
	used   int       // columns
	ends   []float64 // of each column of the last busbar
}

// frame is a part of a bank's circuits that stands on one busbar as drawn.
type frame struct {
	section   *section
	columns   [][]*chain
	continued bool // the busbar comes from the sheet before
	goesOn    bool // and goes on on the next
}

// right is where texts of the column must end.
func (c *canvas) right() float64 { return c.left + c.layout.Column - margin }

// frame draws a bank's busbar with what joins it, column by column.
func (c *canvas) frame(f *frame) {
	c.left = 0
	name := f.section.title
	if f.continued {
		name += ", continued"
	}
	c.text(margin, name, true, ink())
	c.y += 4
	top := c.y
	lowest := top
	spans, ends := make([]float64, len(f.columns)), make([]float64, len(f.columns))
	for i, column := range f.columns {
		c.left, c.y = float64(i)*c.layout.Column, top+8
		for _, part := range column {
			spans[i] = c.branch(f.section, part)
			c.y += 10
		}
		ends[i] = c.y
		lowest = math.Max(lowest, c.y)
	}
	c.open("g", attribute{"data-kind", "busbar"}, attribute{"data-of", f.section.of}, attribute{"stroke-width", busWidth})
	c.words("title", name)
	for i := range f.columns {
		x := float64(i)*c.layout.Column + margin + 8
		c.line(x, top, x, spans[i])
		if i > 0 {
			c.line(x-c.layout.Column, top, x, top)
		}
	}
	c.shut("g")
	c.y, c.left = lowest, 0
	if f.goesOn {
		c.text(margin, "goes on on the next sheet", false, faint())
	}
	c.used, c.ends = max(c.used, len(f.columns)), ends
	c.bottom = math.Max(c.bottom, c.y)
}

// shortest finds where the tail stands best: below the column that ends first.
func (c *canvas) shortest() (left, y float64) {
	if len(c.ends) == 0 {
		return 0, c.y
	}
	at := 0
	for i, end := range c.ends {
		if end < c.ends[at] {
			at = i
		}
	}
	return float64(at) * c.layout.Column, c.ends[at] + 18
}

// tail draws what belongs to no bank: grounding, and what symbols cannot show.
func (c *canvas) tail(p *plan) {
	c.left, c.y = c.shortest()
	if len(p.sections) == 0 {
		c.text(margin, "No bank is described: there is nothing to draw.", true, supply())
	}
	for _, it := range p.grounding.items {
		c.row(it, c.left+margin+14, true, true)
	}
	c.notes(p)
	c.bottom = math.Max(c.bottom, c.y)
}

// branch draws one chain that joins the busbar and tells where it does.
func (c *canvas) branch(s *section, part *chain) (y float64) {
	bus := c.left + margin + 8
	x := bus + step
	for _, source := range s.sources {
		if source == part {
			c.toward(part, x)
			return c.join(bus, x, true)
		}
	}
	y = c.join(bus, x, false)
	c.away(part, x)
	return y
}

// join draws a junction between the conductor at x and the one at bus, and gives
// its height. ends tells that the conductor at x comes from above and ends here.
func (c *canvas) join(bus, x float64, ends bool) float64 {
	y := c.y + joint/2
	if ends {
		c.path("M" + place(x) + " " + place(c.y) + "V" + place(y) + "H" + place(bus))
	} else {
		c.path("M" + place(bus) + " " + place(y) + "H" + place(x) + "V" + place(c.y+joint))
	}
	c.circle(bus, y, 3, solid()...)
	c.y += joint
	return y
}

// toward draws a chain toward the bank: what joins it first, then its items.
func (c *canvas) toward(part *chain, x float64) {
	switch len(part.from) {
	case 0:
	case 1:
		c.toward(part.from[0], x)
	default:
		first := 0.0
		for i, from := range part.from {
			c.toward(from, x+step)
			y := c.join(x, x+step, true)
			if i == 0 {
				first = y
			}
			c.y += between
		}
		c.line(x, first, x, c.y)
	}
	for i, it := range part.items {
		c.item(it, x, len(part.from) == 0 && i == 0 && it.apart == "", false)
	}
}

// away draws a chain away from the bank: its items, then what it feeds.
func (c *canvas) away(part *chain, x float64) {
	for i, it := range part.items {
		c.item(it, x, false, len(part.to) == 0 && i == len(part.items)-1 && it.apart == "")
	}
	if len(part.to) == 1 {
		c.away(part.to[0], x)
		return
	}
	c.fan(part.to, x, x+step, part.thick)
}

// fan draws what leaves one conductor at x, each at its own junction.
func (c *canvas) fan(parts []*chain, x, inner float64, thick bool) {
	if len(parts) == 0 {
		return
	}
	top, last := c.y, c.y
	for _, part := range parts {
		last = c.join(x, inner, false)
		c.away(part, inner)
		c.y += between
	}
	if thick {
		c.line(x, top, x, last, attribute{"stroke-width", "2.2"})
	} else {
		c.line(x, top, x, last)
	}
}

// item draws a row and what hangs on the item's own terminals, beside the
// conductor that goes on.
func (c *canvas) item(it *item, x float64, head, end bool) {
	box := c.y + reach + 2 + 12 // where the case of the symbol ends
	c.row(it, x, head, end)
	if len(it.terminals) == 0 {
		return
	}
	top := c.y
	c.text(x+toText+aside, "load terminals", false, faint())
	c.line(x+aside, box, x+aside, c.y)
	c.fan(it.terminals, x+aside, x+aside+step, false)
	c.line(x, top, x, c.y)
}

// row draws an item: symbol at the left, texts at the right. The conductor
// passes from the row's top to its bottom, but for a head or an end.
func (c *canvas) row(it *item, x float64, head, end bool) {
	left := x + toText
	room := c.right() - left
	texts := c.texts(it, room)
	y := c.y + reach + 2
	height := math.Max(2*reach+4, float64(len(texts))*lineHeight+between)

	whose := attribute{"data-id", it.id}
	if it.id == "" {
		whose = attribute{"data-of", it.of}
	}
	c.open("g", append([]attribute{whose, {"data-kind", it.kind}}, it.data...)...)
	c.words("title", it.title())
	if !head {
		c.line(x, c.y, x, y-reach)
	}
	if !end {
		c.line(x, y+reach, x, c.y+height)
	}
	it.symbol(&c.picture, x, y)
	switch it.apart { // a terminal (03-02-02)
	case "from":
		c.circle(x, c.y+0.5, 2.5)
	case "to":
		c.circle(x, c.y+height-0.5, 2.5)
	}
	c.lettering()
	if it.count != "" {
		c.label(x-13, y+13, it.count, false, faint(), attribute{"text-anchor", "end"}, attribute{"font-size", "9"})
	}
	for i, t := range texts {
		base := c.y + lineHeight*float64(i+1) - 2
		at := left
		if t.sign != nil {
			t.sign.sign(&c.picture, left+6, base-4)
			at += 15
		} else if t.hangs {
			at += 15
		}
		c.label(at, base, t.words, t.bold, t.hue)
	}
	c.shut("g")
	c.shut("g")
	c.y += height
}

// text writes a line by itself.
func (c *canvas) text(x float64, words string, bold bool, h hue) {
	c.lettering()
	for _, line := range wrap(words, c.right()-c.left-x, bold) {
		c.y += lineHeight
		c.label(c.left+x, c.y-3, line, bold, h)
	}
	c.shut("g")
}

// share parts the chains between the columns, in order, so that the highest
// column is as low as can be.
func (c *canvas) share(parts []*chain, heights []float64) [][]*chain {
	limit := 0.0
	for _, h := range heights {
		limit = math.Max(limit, h)
	}
	for {
		columns := fill(parts, heights, limit)
		if len(columns) <= max(1, c.layout.Columns) {
			return columns
		}
		limit *= 1.02
	}
}

// fill puts chains below each other up to a height, then begins a new column.
func fill(parts []*chain, heights []float64, limit float64) [][]*chain {
	var columns [][]*chain
	sum := math.Inf(1)
	for i, part := range parts {
		if sum+heights[i] > limit {
			columns, sum = append(columns, nil), 0
		}
		columns[len(columns)-1] = append(columns[len(columns)-1], part)
		sum += heights[i]
	}
	return columns
}

// height tells how high a chain is, by drawing it where nobody looks.
func (c *canvas) height(part *chain) float64 {
	trial := &canvas{layout: c.layout, findings: c.findings}
	x := margin + 8 + step
	if len(part.from) > 0 {
		trial.toward(part, x)
	} else {
		trial.away(part, x)
	}
	return trial.y + joint + 10
}
