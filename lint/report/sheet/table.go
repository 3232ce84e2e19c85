package sheet

import (
	"cmp"
	"fmt"
	"html/template"
	"math"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/report"
	"stringline/schema/quantity"
)

// table is a table of the page. The first cell of a row is its head.
type table struct {
	Caption string
	Class   string // further classes; "wide" ones become blocks on a telephone
	Heads   []string
	Rows    []row
}

type row struct {
	ID    string // anchor, may be empty
	Cells []cell
}

// cell is one entry. Kind says how it is set: "" for words of the program, given
// for a text of the design, figure, supply for an empty entry, note for what
// stands back, stop or fix for what is found; box for an entry to be filled in.
type cell struct {
	Text  string
	Kind  string
	Items []item // entries one below the other, above Text
	Note  string // below the entry, smaller
	Warn  string // above the entry: a caution
	Refs  []int  // lines of the worksheet
}

// item is one of several entries in a cell; Kind as for cells.
type item struct{ Text, Kind string }

// HTML sets the cell's entry.
func (c cell) HTML() template.HTML {
	text := c.Text
	if c.Kind == "given" {
		return given(text)
	}
	return breakable(words(text))
}

// breakable lets ids break behind their dots, so that none pushes a column wide.
func breakable(text string) template.HTML {
	text = template.HTMLEscapeString(text)
	var b strings.Builder
	for i := range len(text) {
		b.WriteByte(text[i])
		if c := text[i]; (c == '.' || c == '_' || c == '/') && i > 0 && i+1 < len(text) && letter(text[i-1]) && letter(text[i+1]) {
			b.WriteString("<wbr>")
		}
	}
	return template.HTML(b.String())
}

func letter(c byte) bool { return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' }

// said is a cell with words of the program.
func said(text string) cell { return cell{Text: text} }

// told is a cell with a text of the design.
func told(text string) cell { return cell{Text: text, Kind: "given"} }

// figure is a cell with a value, or the empty entry that it is.
func figure(text string) cell {
	if strings.Contains(text, "_____") || strings.HasPrefix(text, "___") {
		return cell{Text: text, Kind: "supply"}
	}
	return cell{Text: text, Kind: "figure"}
}

// muchEnergy is, in J, what reads better in kWh: 100 of them.
const muchEnergy = 100 * 3.6e6

// fact is a cell with a fact's value, and what to supply where it is unknown.
func fact(s *facts.System, id string) cell {
	f, ok := s.Fact(id)
	if !ok {
		return cell{Text: "none", Kind: "note"}
	}
	c := figure(report.Value(&f))
	if f.Known && f.Unit == "Wh" && math.Abs(f.SI) >= muchEnergy {
		c = figure(quantity.Format(f.SI, "kWh"))
	}
	if !f.Known {
		c.Note = wants(f.Missing, f.Because)
		if f.AtLeast != nil {
			c.Note = "at least " + report.Show(facts.InUnit(*f.AtLeast, f.Unit), f.Unit) + "; " + c.Note
		}
	}
	return c
}

// wants says what to supply, or why there is no answer although nothing is missing.
func wants(missing []string, because string) string {
	return cmp.Or(strings.Join(report.Supplies(missing), "; "), because)
}

// factRows lists facts of a subject with their meaning.
func factRows(s *facts.System, subject string, names ...string) []row {
	var rows []row
	for _, name := range names {
		id := subject + "." + name
		w, ok := s.Work(id)
		if !ok {
			continue
		}
		value := fact(s, id)
		rows = append(rows, row{Cells: []cell{{Text: w.Entry.Means, Note: id}, value}})
	}
	return rows
}

func (t *table) add(cells ...cell) { t.Rows = append(t.Rows, row{Cells: cells}) }

// or gives the table, or nil for one without rows.
func (t *table) or() *table {
	if len(t.Rows) == 0 {
		return nil
	}
	return t
}

// Lines says which lines of the worksheet a cell refers to.
func (c cell) Lines() template.HTML {
	if len(c.Refs) == 0 {
		return ""
	}
	links := make([]string, len(c.Refs))
	for i, n := range c.Refs {
		links[i] = fmt.Sprintf(`<a href="#line-%d">%d</a>`, n, n)
	}
	word := "line "
	if len(links) > 1 {
		word = "lines "
	}
	return template.HTML(word + strings.Join(links, ", "))
}
