package schedule

import (
	"encoding/csv"
	"fmt"
	"io"

	"stringline/lint"
	"stringline/lint/facts"
)

// PartsCSV writes the parts list as comma-separated values (RFC 4180) with a head
// line. Numbers are plain, in the unit that stands beside them; what is unknown is
// an empty field.
func PartsCSV(w io.Writer, s *facts.System) error {
	var rows [][]Entry
	for _, p := range Parts(s) {
		rows = append(rows, p.Cells())
	}
	return table(w, "the parts list", PartColumns(), rows)
}

// ConductorsCSV writes the wire schedule, as [PartsCSV] does. The unit of a
// column's numbers ends its name.
func ConductorsCSV(w io.Writer, d *lint.DesignResult) error {
	var rows [][]Entry
	for _, c := range Conductors(d) {
		rows = append(rows, c.Cells())
	}
	return table(w, "the wire schedule", ConductorColumns(), rows)
}

// LabelsCSV writes the label schedule, as [PartsCSV] does.
func LabelsCSV(w io.Writer, d *lint.DesignResult) error {
	var rows [][]Entry
	for _, l := range Labels(d) {
		rows = append(rows, l.Cells())
	}
	return table(w, "the label schedule", LabelColumns(), rows)
}

func table(w io.Writer, what string, columns []Column, rows [][]Entry) error {
	out := csv.NewWriter(w)
	out.UseCRLF = true // RFC 4180, part 2, rule 1
	records := [][]string{make([]string, len(columns))}
	for i, c := range columns {
		records[0][i] = c.Key
	}
	for _, row := range rows {
		record := make([]string, len(row))
		for i, e := range row {
			record[i] = e.Machine()
		}
		records = append(records, record)
	}
	if err := out.WriteAll(records); err != nil {
		return fmt.Errorf("writing %s as CSV: %w", what, err)
	}
	return nil
}
