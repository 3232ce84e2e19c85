package report

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
)

// show writes a value given in a document unit as people read it.
func show(value float64, unit string) string {
	if u, ok := quantity.DocumentUnit(unit); ok {
		return quantity.Format(u.ToSI(value), unit)
	}
	// A gauge is a name and no measure: "5.978 AWG" stands in no shop.
	if u, ok := quantity.Lookup(unit); ok && u.Scale == 0 {
		return quantity.Format(u.ToSI(value), unit)
	}
	return strings.TrimSpace(strconv.FormatFloat(value, 'g', 4, 64) + " " + unit)
}

// empty is an entry on a form that nobody has filled in yet.
func empty(unit string) string {
	if unit == "" || unit == "word" || unit == "yes_no" {
		return "_____"
	}
	if u, ok := quantity.Lookup(unit); ok {
		unit = quantity.ForPeople(u).Symbol
	}
	return "_____ " + unit
}

// forPeople gives a value in a document's unit in the unit that people read it in.
func forPeople(value float64, unit string) (float64, string) {
	from, ok := quantity.Lookup(unit)
	if to := quantity.ForPeople(from); ok && to != from {
		return to.FromSI(from.ToSI(value)), to.Symbol
	}
	return value, unit
}

// perCell tells the attributes that the language has for each cell of a battery:
// readers of the trade look for mV/K per cell.
func perCell(m *verdict.Measured) bool {
	_, name, _ := strings.Cut(m.ID, ".")
	return strings.HasSuffix(name, ".settings.temperature_compensation") || strings.HasSuffix(name, ".compensation_min") || strings.HasSuffix(name, ".compensation_max")
}

func yesNo(yes bool) string {
	if yes {
		return "yes"
	}
	return "no"
}

// known gives the text of a measured value; ok is false where it is unknown.
func known(m *verdict.Measured) (text string, ok bool) {
	switch {
	case m == nil:
		return "", false
	case m.Word != nil:
		return *m.Word, true
	case m.Yes != nil:
		return yesNo(*m.Yes), true
	case m.Value != nil:
		return show(*m.Value, m.Unit), true
	}
	return "", false
}

// entry gives the text of a measured value, or its empty entry.
func entry(m *verdict.Measured) string {
	if text, ok := known(m); ok {
		return text
	}
	return empty(m.Unit)
}

// note says where a measured value comes from.
func note(m *verdict.Measured) string {
	switch {
	case m.Says != "":
		return m.Says
	case m.Formula != "":
		return m.Formula
	case perCell(m):
		return m.ID + ", per cell"
	}
	return m.ID
}

// percent writes a share as a percentage with one decimal; a share that is not
// nought never reads as nought.
func percent(share float64) string {
	value := share * 100
	size := math.Abs(value)
	switch {
	case size >= 1000:
		return strconv.FormatFloat(value, 'f', 0, 64) + " %"
	case size >= 0.05:
		return strconv.FormatFloat(value, 'f', 1, 64) + " %"
	case size < 1e-7: // the judge's slack: exactly at the limit
		return "0.0 %"
	}
	return strconv.FormatFloat(value, 'f', int(math.Ceil(-math.Log10(size))), 64) + " %"
}

// decimals counts the digits behind the point of a formatted value.
func decimals(text string) int {
	number, _, _ := strings.Cut(text, " ")
	if _, tail, found := strings.Cut(number, "."); found {
		return len(tail)
	}
	return 0
}

// difference writes a distance between two shown values with no more decimals
// than both have, so that a reader who subtracts finds the same figure; where
// that would read nought it shows what there is.
func difference(value float64, unit string, shown ...string) string {
	own := show(value, unit)
	places := decimals(own)
	for _, text := range shown {
		if text != "0" && !strings.HasPrefix(text, "0 ") { // nought is written without decimals
			places = min(places, decimals(text))
		}
	}
	value, unit = forPeople(value, unit)
	short := strconv.FormatFloat(value, 'f', places, 64)
	if number, err := strconv.ParseFloat(short, 64); err != nil || number == 0 || places == decimals(own) {
		return own
	}
	return strings.TrimSpace(short + " " + unit)
}

// apart writes two different values so that they also read different.
func apart(a, b float64, unit string) (string, string) {
	first, second := show(a, unit), show(b, unit)
	if first != second || a == b {
		return first, second
	}
	a, _ = forPeople(a, unit)
	b, unit = forPeople(b, unit)
	for digits := 5; digits <= 9; digits++ {
		first, second = strconv.FormatFloat(a, 'g', digits, 64), strconv.FormatFloat(b, 'g', digits, 64)
		if first != second {
			break
		}
	}
	return strings.TrimSpace(first + " " + unit), strings.TrimSpace(second + " " + unit)
}

// factValue writes a known fact's value.
func factValue(f *facts.Fact) string {
	switch f.Kind {
	case facts.Word:
		return f.Word
	case facts.YesNo:
		return yesNo(f.Yes)
	case facts.Series, facts.List:
		if least, most, long := extent(f.List); long {
			return fmt.Sprintf("%d values, %s to %s", len(f.List), quantity.Format(least, f.Unit), quantity.Format(most, f.Unit))
		}
		texts := make([]string, len(f.List))
		for i, v := range f.List {
			texts[i] = quantity.Format(v, f.Unit)
		}
		return strings.Join(texts, ", ")
	}
	return quantity.Format(f.SI, f.Unit)
}

// extent gives the ends of a list, and whether it is too long to be read out.
func extent(list []float64) (least, most float64, long bool) {
	const longest = 12 // the months of a year
	if len(list) <= longest {
		return 0, 0, false
	}
	return slices.Min(list), slices.Max(list), true
}

// showSI writes an SI value in a document unit as people read it.
func showSI(si float64, unit string) string { return quantity.Format(si, unit) }
