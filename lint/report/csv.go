package report

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"
	"strings"

	"stringline/lint/facts"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// FactsCSV writes the facts of one design as comma-separated values (RFC 4180, so
// lines end in CR LF) with a head line: id, value, unit, at_least, missing,
// assumed, means, and of a series what it runs over and in which
// unit; last why a method has no answer although all that it reads is given. Unknown
// values are empty. A list or a series stands in one field, its values parted by
// spaces, as do ids; [SeriesCSV] gives a series point by point.
func FactsCSV(w io.Writer, s *facts.System) error {
	rows := [][]string{{"id", "value", "unit", "at_least", "missing", "assumed", "means", "over", "over_unit", "because"}}
	for _, about := range subjects(s) {
		for _, r := range factsOf(s, about) {
			f := &r.fact
			bound := ""
			if f.AtLeast != nil {
				bound = machine(*f.AtLeast, f.Unit)
			}
			rows = append(rows, []string{f.ID, factCell(f), f.Unit, bound, strings.Join(f.Missing, " "), strings.Join(f.Assumed, " "),
				r.means, strings.Join(machines(r.fact.Over, r.over), " "), r.over, f.Because})
		}
	}
	return writeCSV(w, rows)
}

// SeriesCSV writes series of one design point by point, for plots and
// spreadsheets: id, over, over_unit, value, unit, missing. Of a series that is
// unknown there is one row without a point, with what to supply. An id that is no
// series of the design is an error.
func SeriesCSV(w io.Writer, s *facts.System, ids []string) error {
	known := map[string]factRow{}
	var series []string
	for _, about := range subjects(s) {
		for _, r := range factsOf(s, about) {
			known[r.fact.ID] = r
			if r.fact.Kind == facts.Series {
				series = append(series, r.fact.ID)
			}
		}
	}
	rows := [][]string{{"id", "over", "over_unit", "value", "unit", "missing"}}
	for _, id := range ids {
		r, there := known[id]
		switch {
		case !there:
			near := ""
			if name := source.Nearest(id, series); name != "" {
				near = fmt.Sprintf("; did you mean %q?", name)
			}
			return fmt.Errorf("%w%s", unknownFact(id), near)
		case r.fact.Kind != facts.Series:
			return fmt.Errorf("the fact %q is no series: it has one value", Escape(id))
		case !r.fact.Known:
			rows = append(rows, []string{id, "", r.over, "", r.fact.Unit, strings.Join(r.fact.Missing, " ")})
			continue
		}
		over, values := machines(r.fact.Over, r.over), machines(r.fact.List, r.fact.Unit)
		for i := range values {
			rows = append(rows, []string{id, over[i], r.over, values[i], r.fact.Unit, ""})
		}
	}
	return writeCSV(w, rows)
}

func writeCSV(w io.Writer, rows [][]string) error {
	out := csv.NewWriter(w)
	out.UseCRLF = true
	for _, row := range rows {
		for i := range row {
			row[i] = Escape(row[i]) // no field has a line's end of its own
		}
	}
	if err := out.WriteAll(rows); err != nil {
		return fmt.Errorf("writing facts as CSV: %w", err)
	}
	return nil
}

// machines writes SI values in a document unit.
func machines(list []float64, unit string) []string {
	texts := make([]string, len(list))
	for i, v := range list {
		texts[i] = machine(v, unit)
	}
	return texts
}

func factCell(f *facts.Fact) string {
	if !f.Known {
		return ""
	}
	switch f.Kind {
	case facts.Quantity:
		return machine(f.SI, f.Unit)
	case facts.Series, facts.List:
		return strings.Join(machines(f.List, f.Unit), " ")
	case facts.YesNo:
		return strconv.FormatBool(f.Yes)
	}
	word := Escape(f.Word)
	if word != "" && strings.ContainsRune("=+-@", rune(word[0])) {
		return "'" + word // a spreadsheet would take it for a formula
	}
	return word
}

// machine writes an SI value in a document unit to 9 significant digits.
func machine(si float64, unit string) string {
	return strconv.FormatFloat(quantity.Round(inUnit(si, unit)), 'g', -1, 64)
}

// inUnit gives the value in a document unit of an SI value.
func inUnit(si float64, unit string) float64 {
	if u, ok := quantity.DocumentUnit(unit); ok {
		return u.FromSI(si)
	}
	return si
}
