package sheet

import (
	"io"

	"stringline/lint"
	"stringline/lint/report/plot"
)

// Diagrams lists the names of the pictures on a design's sheet.
func Diagrams(d *lint.DesignResult) []string {
	return plot.Names(d.System)
}

// Diagram writes one picture of the sheet as an SVG file by itself. Errors are
// those of w, or a [plot.UnknownError].
func Diagram(w io.Writer, d *lint.DesignResult, name string) error {
	return plot.Alone(w, d.System, name)
}
