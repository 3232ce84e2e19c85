package diagram

import (
	"io"
	"strings"
)

// line is one line of text beside a symbol.
type line struct {
	words string
	bold  bool
	hue   hue
	sign  *finding // drawn before it
	hangs bool     // goes on from a line with a sign
}

// texts gives an item's lines, wrapped to the room there is.
func (c *canvas) texts(it *item, room float64) []line {
	var all []line
	for _, words := range wrap(it.heading, room, true) {
		all = append(all, line{words: words, bold: true, hue: ink()})
	}
	for _, text := range it.lines {
		h := ink()
		if strings.Contains(text, "_____") {
			h = supply()
		}
		for _, words := range wrap(text, room, false) {
			all = append(all, line{words: words, hue: h})
		}
	}
	found := c.findings[it.id]
	for i := range found {
		all = append(all, found[i].lines(room)...)
	}
	return all
}

func (f *finding) lines(room float64) []line {
	var all []line
	for i, words := range wrap(f.text(), room-15, true) {
		l := line{words: words, bold: true, hue: f.hue(), hangs: i > 0}
		if i == 0 {
			l.sign = f
		}
		all = append(all, l)
	}
	return all
}

// title is what a screen reader says of an item, and a pointer shows.
func (it *item) title() string {
	return it.heading + ": " + strings.Join(it.lines, "; ")
}

// lettering opens the group that texts stand in.
func (c *canvas) lettering() {
	c.open("g", append(color("fill", ink()), attribute{"stroke", "none"})...)
}

// label writes one line inside a group for texts.
func (c *canvas) label(x, y float64, words string, bold bool, h hue, more ...attribute) {
	attributes := append([]attribute{{"x", place(x)}, {"y", place(y)}}, more...)
	if bold {
		attributes = append(attributes, attribute{"font-weight", "600"})
	}
	if h != ink() {
		attributes = append(attributes, color("fill", h)...)
	}
	c.words("text", words, attributes...)
}

// notes writes what the symbols cannot show.
func (c *canvas) notes(p *plan) {
	c.y += 8
	for i := range p.elsewhere {
		f := &p.elsewhere[i]
		c.lettering()
		for _, l := range f.lines(c.right() - c.left - margin) {
			c.y += lineHeight
			if l.sign != nil {
				f.sign(&c.picture, c.left+margin+6, c.y-7)
			}
			c.label(c.left+margin+15, c.y-3, l.words, true, l.hue)
		}
		c.shut("g")
	}
	if len(p.left) > 0 {
		c.text(margin, "NOT DRAWN, for they name what is not there: "+strings.Join(p.left, ", "), true, stop())
	}
	c.text(margin, "Symbols after IEC 60617. Not to scale. One line stands for both poles. The design does not say in which order the devices of one circuit stand: each is drawn at the end that fault current comes from.", false, faint())
}

// write writes the drawing with its head.
func (c *canvas) write(w io.Writer, title, description string) error {
	wide, high := place(c.layout.Column*float64(max(1, c.used))), place(c.bottom+margin)
	var out picture
	out.open("svg", attribute{"xmlns", "http://www.w3.org/2000/svg"}, attribute{"role", "graphics-document"},
		attribute{"viewBox", "0 0 " + wide + " " + high}, attribute{"width", wide}, attribute{"height", high},
		attribute{"font-family", "system-ui, 'DejaVu Sans', Verdana, sans-serif"}, attribute{"font-size", place(letter)},
		attribute{"style", "max-width:100%;height:auto"}, attribute{"class", "one-line"})
	out.words("title", title)
	out.words("desc", description)
	if c.layout.Alone {
		out.words("style", standAlone)
	}
	out.open("g", append(color("stroke", ink()), attribute{"fill", "none"}, attribute{"stroke-width", "1.4"}, attribute{"direction", "ltr"})...)
	out.Write(c.Bytes())
	out.shut("g")
	out.shut("svg")
	_, err := w.Write(out.Bytes())
	return err
}

const standAlone = `:root{--ink:#111;--paper:#fff;--faint:#595959;--stop:#b3001b;--fix:#8a5a00;--supply:#004b99}
@media (prefers-color-scheme: dark){:root{--ink:#eee;--paper:#161616;--faint:#aaa;--stop:#ff8a8a;--fix:#ffc25c;--supply:#8fc1ff}}
svg{background:var(--paper)}`
