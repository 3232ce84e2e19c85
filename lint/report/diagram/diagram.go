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
	"errors"
	"fmt"
	"io"

	"stringline/lint"
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
// <g> with data-id (its id in the fact table), data-kind and a <title>; a
// protection or disconnect has data-rating in ampere, a conductor data-length in
// meters and data-area in square meters, where they are known. A <desc> tells the
// paths in words. The same design gives the same bytes. It is an error where the
// design could not be read at all, or where w fails.
func Draw(w io.Writer, d *lint.DesignResult, l Layout) error {
	if d == nil || d.System == nil {
		return errors.New("drawing the diagram: the design could not be read")
	}
	if l.Column == 0 {
		l.Column = 360
	}
	if l.Column < 300 {
		return fmt.Errorf("drawing the diagram: a column of %g is too narrow: at least 300", l.Column)
	}
	s := survey(d)
	c := &canvas{layout: l, findings: s.findings}
	c.draw(s)
	if err := c.write(w, d, s); err != nil {
		return fmt.Errorf("drawing the diagram: %w", err)
	}
	return nil
}
