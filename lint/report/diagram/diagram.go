// Package diagram draws a design's one-line diagram, from the arrays to the
// loads, as one SVG element.
//
// [Draw] makes a tree of chains out of the fact table (chain.go and circuits.go),
// gives each thing in them its symbol and its texts (label.go, symbol.go) and
// places them (layout.go): every chain runs from top to bottom, its conductor at
// the left and its texts at the right, and what joins it stands one step further
// in. So texts cannot meet however many circuits there are, and the drawing is as
// readable on a telephone as on paper. It computes nothing: each number is a fact
// or stands in a verdict, and what is unknown is an empty entry.
package diagram

import (
	"bytes"
	"errors"
	"fmt"
	"io"

	"stringline/lint"
	"stringline/lint/report"
)

// Layout says what the drawing is made for.
type Layout struct {
	// Width of one column in units of the drawing, one of which is a pixel
	// where it is shown at its own size; 0 stands for 360, the width of a
	// small telephone. At least 300.
	Column float64
	// Columns side by side at most; 0 stands for 1. The circuits of a bank are
	// shared out between them.
	Columns int
	// Height of a sheet of [Sheets]; 0 stands for that of an A4 or Letter page as
	// wide as the columns, with room for a heading. [Draw] makes its drawing as high as it takes, but parts
	// chains of more than twice that, where it has more than one column.
	Height float64
	// Alone makes a file of its own: colors are set in it, for light and dark.
	// Without it the page around the drawing sets them.
	Alone bool
}

// Narrow is for a telephone, and for a long strip of paper.
func Narrow() Layout { return Layout{Column: 360, Columns: 1} }

// Wide is for a screen and for A4 and Letter upright: two columns of circuits,
// letters some 2.8 mm high on 190 mm of paper.
func Wide() Layout { return Layout{Column: 360, Columns: 2} }

// Draw writes the diagram of a design as one SVG element. Each thing drawn is a
// <g> with data-id (its id in the fact table), data-kind and a <title>; what is no
// subject by itself (a busbar, a surge protective device) has data-of instead. A
// protection or disconnect has data-rating in ampere, a conductor data-length in
// meters and data-area in square meters, where they are known. A <desc> tells the
// paths in words. The same design gives the same bytes. It is an error where the
// design could not be read at all, or where w fails.
func Draw(w io.Writer, d *lint.DesignResult, l Layout) error {
	l, err := l.settle(d)
	if err != nil {
		return err
	}
	p := survey(d)
	c := &canvas{layout: l, findings: p.findings, y: margin}
	description := p.describe()
	if l.Columns > 1 {
		p.part(c, 2*l.column())
	}
	for _, s := range p.sections {
		chains := s.chains()
		c.frame(&frame{section: s, columns: c.share(chains, c.heights(chains))})
		c.y += 18
	}
	c.tail(p)
	if err := c.write(w, heading(d), description); err != nil {
		return fmt.Errorf("drawing the diagram: %w", err)
	}
	return nil
}

// Sheets draws the diagram as [Draw] does, on as many SVG elements as it takes for
// none to be higher than the layout's Height, so that each can be printed on a page
// by itself. Circuits that join a long chain, or leave it, go on a busbar of their
// own; one circuit by itself is not parted, and makes its sheet higher where it must.
func Sheets(d *lint.DesignResult, l Layout) ([][]byte, error) {
	l, err := l.settle(d)
	if err != nil {
		return nil, err
	}
	p := survey(d)
	blank := func() *canvas { return &canvas{layout: l, findings: p.findings, y: margin} }
	description := p.describe()
	p.part(blank(), l.column())
	var sheets []*canvas
	for _, s := range p.sections {
		for _, f := range l.frames(s, blank()) {
			c := blank()
			c.frame(f)
			// A small bank may share the sheet of the one before.
			if n := len(sheets); n > 0 && !f.continued && !f.goesOn && sheets[n-1].bottom+c.bottom+18 <= l.Height {
				sheets[n-1].y = sheets[n-1].bottom + 18
				sheets[n-1].frame(f)
				continue
			}
			sheets = append(sheets, c)
		}
	}
	tail := blank()
	tail.tail(p)
	fits := false
	if n := len(sheets); n > 0 {
		_, y := sheets[n-1].shortest()
		if fits = y+tail.bottom <= l.Height; fits {
			sheets[n-1].tail(p)
		}
	}
	if !fits {
		sheets = append(sheets, tail)
	}
	var drawn [][]byte
	for i, c := range sheets {
		title, says := heading(d), description
		if len(sheets) > 1 {
			title = fmt.Sprintf("%s, sheet %d of %d", title, i+1, len(sheets))
		}
		if i > 0 {
			says = "Goes on from the sheet before; the first tells all paths in words."
		}
		c.used = max(c.used, l.Columns) // sheets of one width, so of one scale
		var b bytes.Buffer
		if err := c.write(&b, title, says); err != nil {
			return nil, fmt.Errorf("drawing the diagram: %w", err)
		}
		drawn = append(drawn, b.Bytes())
	}
	return drawn, nil
}

// settle fills in what a layout leaves open.
func (l Layout) settle(d *lint.DesignResult) (Layout, error) {
	if d == nil || d.System == nil {
		return l, errors.New("drawing the diagram: the design could not be read")
	}
	if l.Column == 0 {
		l.Column = 360
	}
	if l.Column < 300 {
		return l, fmt.Errorf("drawing the diagram: a column of %g is too narrow: at least 300", l.Column)
	}
	l.Columns = max(1, l.Columns)
	if l.Height == 0 {
		l.Height = l.Column * float64(l.Columns) * 1.27
	}
	return l, nil
}

// column is how high the circuits of one column may be.
func (l Layout) column() float64 {
	const head = 2*margin + 2*lineHeight + 12
	return l.Height - head
}

// frames parts a bank's circuits into what fits on one sheet each.
func (l Layout) frames(s *section, c *canvas) []*frame {
	chains := s.chains()
	heights := c.heights(chains)
	columns := fill(chains, heights, l.column())
	if len(columns) <= l.Columns {
		return []*frame{{section: s, columns: c.share(chains, heights)}}
	}
	var frames []*frame
	for start := 0; start < len(columns); start += l.Columns {
		end := min(start+l.Columns, len(columns))
		frames = append(frames, &frame{section: s, columns: columns[start:end], continued: start > 0, goesOn: end < len(columns)})
	}
	return frames
}

// heights measures chains.
func (c *canvas) heights(chains []*chain) []float64 {
	heights := make([]float64, len(chains))
	for i, part := range chains {
		heights[i] = c.height(part)
	}
	return heights
}

func heading(d *lint.DesignResult) string {
	title := "One-line diagram of " + report.Escape(d.Name)
	if d.Revision != "" {
		title += ", revision " + report.Escape(d.Revision)
	}
	return title
}
