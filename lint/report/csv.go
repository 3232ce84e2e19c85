package report

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"
	"strings"

	"stringline/lint/facts"
	"stringline/schema/quantity"
)

// FactsCSV writes the facts of one design as comma-separated values (RFC 4180)
// with a head line: id, value, unit, at_least, missing, assumed, means, and what a series runs over. Unknown
// values are empty; ids in one field are parted by spaces.
func FactsCSV(w io.Writer, s *facts.System) error {
	out := csv.NewWriter(w)
	rows := [][]string{{"id", "value", "unit", "at_least", "missing", "assumed", "means", "over"}}
	for _, about := range subjects(s) {
		for _, r := range factsOf(s, about) {
			f := &r.fact
			bound := ""
			if f.AtLeast != nil {
				bound = machine(*f.AtLeast, f.Unit)
			}
			rows = append(rows, []string{f.ID, factCell(f), f.Unit, bound,
				strings.Join(f.Missing, " "), strings.Join(f.Assumed, " "), r.means, overCell(&r)})
		}
	}
	if err := out.WriteAll(rows); err != nil {
		return fmt.Errorf("writing facts as CSV: %w", err)
	}
	return nil
}

// overCell gives what a series runs over: its values, parted by spaces, and its
// unit.
func overCell(r *factRow) string {
	if r.fact.Kind != facts.Series || !r.fact.Known {
		return ""
	}
	texts := make([]string, len(r.fact.Over))
	for i, v := range r.fact.Over {
		texts[i] = machine(v, r.over)
	}
	return strings.TrimSpace(strings.Join(texts, " ") + " " + r.over)
}

func factCell(f *facts.Fact) string {
	if !f.Known {
		return ""
	}
	switch f.Kind {
	case facts.Quantity:
		return machine(f.SI, f.Unit)
	case facts.Series, facts.List:
		texts := make([]string, len(f.List))
		for i, v := range f.List {
			texts[i] = machine(v, f.Unit)
		}
		return strings.Join(texts, " ")
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
