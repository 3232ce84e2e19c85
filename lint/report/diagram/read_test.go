package diagram_test

import (
	"encoding/xml"
	"io"
	"strconv"
	"strings"
	"testing"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/opentype"
)

// element is one element of a drawing, read back.
type element struct {
	name     string
	values   map[string]string
	text     string
	children []*element
	parent   *element
}

// parsed reads a drawing back with a strict XML reader.
func parsed(t testing.TB, drawing []byte) *element {
	t.Helper()
	decoder := xml.NewDecoder(strings.NewReader(string(drawing)))
	root := &element{}
	at := root
	for {
		token, err := decoder.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatalf("the drawing is not well formed: %v", err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			e := &element{name: token.Name.Local, values: map[string]string{}, parent: at}
			for _, a := range token.Attr {
				if _, twice := e.values[a.Name.Local]; twice {
					t.Errorf("<%s> has %s twice", e.name, a.Name.Local)
				}
				e.values[a.Name.Local] = a.Value
			}
			at.children = append(at.children, e)
			at = e
		case xml.EndElement:
			at = at.parent
		case xml.CharData:
			at.text += string(token)
		}
	}
	if len(root.children) != 1 || root.children[0].name != "svg" {
		t.Fatalf("the drawing is not one svg element")
	}
	return root.children[0]
}

func (e *element) each(visit func(*element)) {
	visit(e)
	for _, c := range e.children {
		c.each(visit)
	}
}

func (e *element) child(name string) *element {
	for _, c := range e.children {
		if c.name == name {
			return c
		}
	}
	return nil
}

// things gives the drawn things by id.
func (e *element) things() map[string][]*element {
	found := map[string][]*element{}
	e.each(func(g *element) {
		if id, ok := g.values["data-id"]; ok {
			found[id] = append(found[id], g)
		}
	})
	return found
}

func number(t testing.TB, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatalf("%q is no number: %v", text, err)
	}
	return v
}

// box is where a text stands.
type box struct {
	left, right, top, bottom float64
	text                     string
}

// face measures texts in a real sans-serif face, plain and bold: the Go fonts, an
// independent truth for the widths that the layout reckons with.
type face struct{ plain, bold font.Face }

func newFace(t testing.TB) face {
	t.Helper()
	open := func(data []byte) font.Face {
		parsed, err := opentype.Parse(data)
		if err != nil {
			t.Fatal(err)
		}
		// 100 units high, so that rounding to the grid does not matter.
		f, err := opentype.NewFace(parsed, &opentype.FaceOptions{Size: 100, DPI: 72, Hinting: font.HintingNone})
		if err != nil {
			t.Fatal(err)
		}
		return f
	}
	return face{open(goregular.TTF), open(gobold.TTF)}
}

func (f face) width(text string, size float64, bold bool) float64 {
	of := f.plain
	if bold {
		of = f.bold
	}
	return float64(font.MeasureString(of, text)) / 64 * size / 100
}

// boxes gives the boxes of all texts of a drawing.
func boxes(t testing.TB, e *element) []box {
	t.Helper()
	var all []box
	measure := newFace(t)
	e.each(func(x *element) {
		if x.name != "text" {
			return
		}
		size := 11.0
		if s, ok := x.values["font-size"]; ok {
			size = number(t, s)
		}
		left, base := number(t, x.values["x"]), number(t, x.values["y"])
		length := measure.width(x.text, size, x.values["font-weight"] != "")
		switch x.values["text-anchor"] {
		case "end":
			left -= length
		case "middle":
			left -= length / 2
		}
		all = append(all, box{left, left + length, base - 0.78*size, base + 0.22*size, x.text})
	})
	return all
}

// overlaps lists pairs of texts that run into each other, and texts that leave
// the drawing.
func overlaps(t testing.TB, e *element) []string {
	t.Helper()
	var wrong []string
	frame := strings.Fields(e.values["viewBox"])
	width, height := number(t, frame[2]), number(t, frame[3])
	all := boxes(t, e)
	for i, a := range all {
		if a.left < 0 || a.right > width || a.top < 0 || a.bottom > height {
			wrong = append(wrong, "leaves the drawing: "+a.text)
		}
		for _, b := range all[:i] {
			if a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom {
				wrong = append(wrong, a.text+" runs into "+b.text)
			}
		}
	}
	return wrong
}
