package sheet

import (
	"bytes"
	"html/template"
	"io"
	"strings"

	"stringline/lint"
	"stringline/lint/report/diagram"
	"stringline/lint/report/plot"
)

// oneLine is the name of the one-line diagram among the pictures.
const oneLine = "oneline"

// Diagrams lists the names of the pictures of a design.
func Diagrams(d *lint.DesignResult) []string {
	return append([]string{oneLine}, plot.Names(d.System)...)
}

// Diagram writes one picture of the sheet as an SVG file by itself. Errors are
// those of w, or a [plot.UnknownError].
func Diagram(w io.Writer, d *lint.DesignResult, name string) error {
	if name == oneLine {
		layout := diagram.Wide()
		layout.Alone = true
		return diagram.Draw(w, d, layout)
	}
	err := plot.Alone(w, d.System, name)
	if unknown, ok := err.(*plot.UnknownError); ok {
		return plot.Unknown(unknown.Name, Diagrams(d))
	}
	return err
}

// pictures draws all of them into the page. The one-line diagram stands there
// twice, in one piece for narrow screens, and as sheets that fit a page for wide
// ones and for paper: of the two one is seen.
func (p *page) pictures(d *lint.DesignResult) error {
	var narrow bytes.Buffer
	if err := diagram.Draw(&narrow, d, diagram.Narrow()); err != nil {
		return err
	}
	p.OneLine = append(p.OneLine, picture{Name: oneLine, Class: "narrow", SVG: template.HTML(narrow.String())})
	wide, err := diagram.Sheets(d, diagram.Wide())
	if err != nil {
		return err
	}
	for _, one := range wide {
		p.OneLine = append(p.OneLine, picture{Name: oneLine, Class: "wide", SVG: template.HTML(one)})
	}
	for _, name := range plot.Names(d.System) {
		var b bytes.Buffer
		if err := plot.Draw(&b, d.System, name); err != nil {
			return err
		}
		explained, heads, rows, err := plot.Describe(d.System, name)
		if err != nil {
			return err
		}
		kind, about, _ := strings.Cut(name, ".")
		one := picture{Name: name, SVG: template.HTML(b.String()), Words: explained, Table: &table{Heads: heads, Class: "figures"}}
		switch kind {
		case "iv":
			one.Title = "Current and power over voltage, pv_input." + about
			one.Table.Caption = "Points of the curves, at 1000 W/m²"
		case "day":
			one.Title = "Power through a clear day, charger." + about
			one.Table.Caption = "Energy of a clear day"
		default:
			one.Title = "The year by month"
			one.Table.Caption = "Energy of a mean day"
		}
		for _, r := range rows {
			line := row{Cells: []cell{said(r.Head)}}
			for _, value := range r.Values {
				line.Cells = append(line.Cells, figure(value))
			}
			one.Table.Rows = append(one.Table.Rows, line)
		}
		p.Pictures = append(p.Pictures, one)
	}
	return nil
}
