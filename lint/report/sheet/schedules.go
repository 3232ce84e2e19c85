package sheet

import (
	"io"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/report/schedule"
)

// Parts writes the parts list as comma-separated values.
func Parts(w io.Writer, d *lint.DesignResult) error { return schedule.PartsCSV(w, d.System) }

// wireTables parts the columns of the wire schedule among tables that are no wider
// than a page: what is bought and pulled, how it lies and what it may carry, and
// what it does carry. Every column stands in one of them; the run heads each row.
var wireTables = []struct {
	caption string
	columns []string
}{
	{"Wires: what is laid", []string{"from", "to", "conductors_per_pole", "runs_alike", "size_mm2", "material", "insulation_degC", "rated_voltage_V", "length_m", "conductor_length_m", "grounding_mm2"}},
	{"Wires: how they lie, and what they may carry", []string{"method", "cores", "ambient_degC", "grouped", "terminals_degC", "ampacity_A", "allowed_A", "current_A", "device", "device_rating_A"}},
	{"Wires: in operation and in a fault", []string{"operating_current_A", "drop_V", "drop_percent", "path_drop_percent", "loss_W", "highest_voltage_V", "fault_current_near_A", "fault_current_far_A"}},
}

// lists fills the parts list and the schedules of wires and labels.
func (p *page) lists(d *lint.DesignResult) {
	p.Parts = &table{Caption: "Parts", Class: "wide", Heads: []string{"Part", "Quantity", "Ratings", "Used in", "Data sheet"}}
	for _, part := range schedule.Parts(d.System) {
		name := cell{Text: part.Kind, Note: part.Name}
		quantity := entered(part.Quantity)
		if part.Quantity.Unit == "" && part.Quantity.Known {
			quantity.Text += " pieces"
			if part.Quantity.Number == 1 {
				quantity.Text = "1 piece"
			}
		}
		ratings := cell{}
		for _, r := range part.Ratings {
			one := item{Text: strings.ReplaceAll(r.Name, "_", " ") + " " + r.Value.Text}
			if !r.Value.Known {
				one.Kind = "supply"
			}
			ratings.Items = append(ratings.Items, one)
		}
		at := cell{Text: "spelled out in the design", Kind: "note"}
		if part.Sheet.Valid() {
			at = cell{Text: part.Sheet.String(), Kind: "note"}
		}
		p.Parts.add(name, quantity, ratings, said(strings.Join(part.UsedIn, ", ")), at)
	}
	p.Parts = p.Parts.or()

	columns := schedule.ConductorColumns()
	place := func(key string) int {
		return slices.IndexFunc(columns, func(c schedule.Column) bool { return c.Key == key })
	}
	runs := schedule.Conductors(d)
	for _, of := range wireTables {
		t := &table{Caption: of.caption, Class: "wide wires", Heads: []string{"Run"}}
		for _, key := range of.columns {
			t.Heads = append(t.Heads, columns[place(key)].Title)
		}
		for i := range runs {
			cells := runs[i].Cells()
			line := row{Cells: []cell{entered(cells[place("id")])}}
			for _, key := range of.columns {
				line.Cells = append(line.Cells, entered(cells[place(key)]))
			}
			t.Rows = append(t.Rows, line)
		}
		if len(t.Rows) > 0 {
			p.Wires = append(p.Wires, t)
		}
	}

	p.Labels = &table{Caption: "Labels", Class: "wide", Heads: []string{"Belongs to", "Place", "Says", "Source", "Due if"}}
	labels := schedule.Labels(d)
	for i := range labels {
		l := &labels[i]
		says := cell{}
		for _, words := range l.Lines {
			one := item{Text: words}
			if strings.Contains(words, "_____") {
				one.Kind = "supply"
			}
			says.Items = append(says.Items, one)
		}
		p.Labels.add(said(l.About), said(l.Place), says, cell{Text: l.Source, Note: l.Read}, said(l.If))
	}
	p.Labels = p.Labels.or()
}

// entered is a cell with an entry of a schedule.
func entered(e schedule.Entry) cell {
	if !e.Known {
		return cell{Text: e.Text, Kind: "supply"}
	}
	c := said(e.Text)
	if e.Measured {
		c.Kind = "figure"
	}
	return c
}
