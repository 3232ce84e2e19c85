package diagram

import (
	"bytes"
	"encoding/xml"
	"math"
	"strconv"
	"strings"
)

// picture collects SVG elements. Texts and attributes are escaped by the XML
// encoder's own rules.
type picture struct{ bytes.Buffer }

// attribute is one attribute of an element.
type attribute struct{ name, value string }

func escaped(text string) string {
	text = strings.ReplaceAll(text, tie, " ")
	var b bytes.Buffer
	// EscapeText fails only where its writer does; a buffer does not.
	_ = xml.EscapeText(&b, []byte(text))
	return b.String()
}

// place writes a coordinate: tenths are finer than any screen shows.
func place(v float64) string {
	return strconv.FormatFloat(math.Round(v*10)/10, 'f', -1, 64)
}

func (p *picture) open(name string, attributes ...attribute) {
	p.start(name, attributes)
	p.WriteString(">")
}

func (p *picture) shut(name string) { p.WriteString("</" + name + ">\n") }

// empty writes an element without content.
func (p *picture) empty(name string, attributes ...attribute) {
	p.start(name, attributes)
	p.WriteString("/>\n")
}

// words writes an element that holds a text.
func (p *picture) words(name, text string, attributes ...attribute) {
	p.open(name, attributes...)
	p.WriteString(escaped(text))
	p.shut(name)
}

func (p *picture) start(name string, attributes []attribute) {
	p.WriteString("<" + name)
	for _, a := range attributes {
		p.WriteString(" " + a.name + `="` + escaped(a.value) + `"`)
	}
}

// color gives the attributes that paint with a named color of the page: the
// custom property where styles are known, else its stand-in.
func color(what string, c hue) []attribute {
	return []attribute{{what, c.standIn}, {"style", what + ":var(" + c.property + "," + c.standIn + ")"}}
}

// hue is a color that the page can set.
type hue struct{ property, standIn string }

// Hues are the page's own: what they mean follows the safety-sign standards
// (ISO 3864, from memory). Red is for a stop alone, amber for a fix, blue for
// what to supply.
func ink() hue    { return hue{"--ink", "#111111"} }
func faint() hue  { return hue{"--faint", "#595959"} }
func stop() hue   { return hue{"--stop", "#b3001b"} }
func fix() hue    { return hue{"--fix", "#8a5a00"} }
func supply() hue { return hue{"--supply", "#004b99"} }

// path draws lines along a path.
func (p *picture) path(d string, more ...attribute) {
	p.empty("path", append([]attribute{{"d", d}}, more...)...)
}

// line draws one straight line.
func (p *picture) line(x1, y1, x2, y2 float64, more ...attribute) {
	p.path("M"+place(x1)+" "+place(y1)+"L"+place(x2)+" "+place(y2), more...)
}

func (p *picture) circle(x, y, r float64, more ...attribute) {
	p.empty("circle", append([]attribute{{"cx", place(x)}, {"cy", place(y)}, {"r", place(r)}}, more...)...)
}

func (p *picture) box(x, y, w, h float64, more ...attribute) {
	p.empty("rect", append([]attribute{{"x", place(x)}, {"y", place(y)}, {"width", place(w)}, {"height", place(h)}}, more...)...)
}

// solid fills a shape with the color of its lines.
func solid() []attribute { return color("fill", ink()) }
