// Package schedule lists what a design takes and how it is wired and labeled: the
// parts list ([Parts]), the wire schedule ([Conductors]) and the label schedule
// ([Labels]), as rows that a page or a CSV file shows.
//
// Every value of a row is a fact, an attribute included, or stands in a verdict;
// this package computes none. The one thing that it does is to gather: parts that
// are alike become one row, and their quantities, each a fact, are added up. What
// is unknown is an empty entry, and names what to supply.
package schedule

import (
	"strconv"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/report"
	"stringline/schema/quantity"
)

// Entry is one value of a row.
type Entry struct {
	Facts   []string // the ids of the facts that it shows; none for plain words
	Text    string   // as people read it, escaped; an empty entry ("_____ A") where it is unknown
	Known   bool
	Missing []string // where it is unknown: the ids of the attributes that would make it known
	// Number and Unit are the value of a known quantity, in the unit of the facts
	// document ("" for a count), rounded as machine output is. Measured tells that
	// there is one.
	Number   float64
	Unit     string
	Measured bool
}

// Machine gives the value as a CSV file holds it: a plain number, a text, or
// nothing where it is unknown.
func (e Entry) Machine() string {
	switch {
	case !e.Known:
		return ""
	case e.Measured:
		return strconv.FormatFloat(e.Number, 'g', -1, 64)
	case e.Text != "" && strings.ContainsRune("=+-@", rune(e.Text[0])):
		return "'" + e.Text // a spreadsheet would take it for a formula
	}
	return e.Text
}

// Column heads one column of a table.
type Column struct {
	Key   string // of the CSV file: lower case, words joined with _
	Title string // for people
	Unit  string // of the numbers in it, "" where it has none
}

// words makes an entry of a plain text.
func words(text string) Entry { return Entry{Text: text, Known: text != ""} }

// reader reads facts as entries.
type reader struct{ system *facts.System }

// fact reads one fact. Where there is none of that id the entry is empty.
func (r reader) fact(id string) Entry {
	f, ok := r.system.Fact(id)
	if !ok {
		return Entry{}
	}
	e := Entry{Facts: []string{id}, Known: f.Known, Missing: f.Missing, Unit: f.Unit}
	switch {
	case !f.Known && f.AtLeast != nil:
		e.Text = "at least " + quantity.Format(*f.AtLeast, f.Unit)
	case !f.Known:
		e.Text = empty(f.Unit)
	case f.Kind == facts.Word:
		e.Text, e.Unit = report.Escape(f.Word), ""
	case f.Kind == facts.YesNo:
		e.Text, e.Unit = "no", ""
		if f.Yes {
			e.Text = "yes"
		}
	case f.Kind == facts.Quantity:
		e.Text = quantity.Format(f.SI, f.Unit)
		e.Number, e.Measured = facts.InUnit(f.SI, f.Unit), true
	default:
		texts := make([]string, len(f.List))
		for i, v := range f.List {
			texts[i] = quantity.Format(v, f.Unit)
		}
		e.Text, e.Unit = strings.Join(texts, ", "), ""
	}
	return e
}

// size reads a conductor's size: in AWG or kcmil for people where it was written
// so, always in mm2 for machines.
func (r reader) size(s *facts.Subject, name string) Entry {
	e := r.fact(s.ID() + "." + name)
	if !e.Known || s.Block() == nil {
		return e
	}
	if v, ok := s.Block().Value(name); ok && (v.Written.Symbol == "AWG" || v.Written.Symbol == "kcmil") {
		e.Text = quantity.Format(v.SI, v.Written.Symbol)
	}
	return e
}

// text gives a fact's text alone.
func (r reader) text(id string) string { return r.fact(id).Text }

// yes tells whether a yes/no fact is known, and what it is.
func (r reader) yes(id string) (yes, known bool) {
	f, ok := r.system.Fact(id)
	return f.Yes, ok && f.Known
}

// word gives a known word.
func (r reader) word(id string) (word string, known bool) {
	f, ok := r.system.Fact(id)
	return f.Word, ok && f.Known
}

// empty is an entry on a form that nobody has filled in yet.
func empty(unit string) string {
	if unit == "" || unit == "word" || unit == "yes_no" {
		return "_____"
	}
	return "_____ " + unit
}

// name is an id without its kind.
func name(id string) string {
	_, rest, _ := strings.Cut(id, ".")
	return rest
}

// add adds up quantities of parts that are alike. Where one is unknown so is the
// sum, with what is known as the least.
func add(a, b Entry) Entry {
	known := func(e Entry) float64 {
		if e.Measured {
			return e.Number
		}
		return 0
	}
	sum := Entry{Facts: append(append([]string{}, a.Facts...), b.Facts...), Known: a.Known && b.Known, Unit: a.Unit,
		Missing: append(append([]string{}, a.Missing...), b.Missing...)}
	sum.Number, sum.Measured = quantity.Round(known(a)+known(b)), true
	u, _ := quantity.DocumentUnit(a.Unit)
	sum.Text = quantity.Format(u.ToSI(sum.Number), a.Unit)
	if !sum.Known && sum.Number > 0 {
		sum.Text = "at least " + sum.Text
	} else if !sum.Known {
		sum.Text = empty(a.Unit)
	}
	return sum
}
