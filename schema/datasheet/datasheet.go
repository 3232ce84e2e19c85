// Package datasheet reads data sheets from a table of comma-separated values and
// writes them as part blocks of a parts file.
//
// Use [Import]. One row is one part, one column one attribute. A heading names the
// attribute in the language's own word and its unit in brackets, "voc [V]"; a map of
// columns says so for headings that are somebody else's. What a table does not say
// clearly is refused at its line and column, never guessed: a number without a unit,
// a unit of another dimension than the heading's, a comma that may part thousands
// or decimals, a name that two rows share, a heading that nobody knows.
//
// The text that comes out is tidy, and has gone through the reader of designs. An
// empty cell is a value that the sheet does not tell: the attribute is left out.
package datasheet

import (
	"fmt"
	"path"
	"slices"
	"strings"
	"unicode"

	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// Decimals says how a table writes decimals.
type Decimals uint8

// The ways to write decimals.
const (
	Plain Decimals = iota // a point; or a comma where nothing else can be meant
	Point
	Comma
)

// Kinds of problem that an option of [Options] settles.
const (
	KindDecimal   = "decimal"   // Decimals
	KindSeparator = "separator" // Separator
)

// Options says how to read a table.
type Options struct {
	// Columns maps columns to attributes: a table with the headings column,
	// attribute and unit. nil: the headings speak for themselves.
	Columns *source.File
	// Part is the kind of every row; empty where a column named part tells it.
	Part     string
	Decimals Decimals
	// Separator parts columns: ',', ';' or a tab; 0 takes what the first line has.
	Separator rune
}

// Result is what a table gave.
type Result struct {
	Text  []byte // of a parts file with the rows that could be read; nil where there are none
	Parts int    // blocks in Text
	Rows  int    // of the table, without headings and empty ones
	// Whole says that the headings and the map were understood, so that the rows
	// that are not refused may be kept.
	Whole bool
}

// mostRows bounds the rows of a table.
const mostRows = 1000

// Import reads a table. The problems, sorted, at most [source.MaxProblems] a file,
// say what is refused: a row with any problem is not in the text.
func Import(table *source.File, o Options) (Result, source.Problems) {
	r := &reader{Options: o, Collector: hcltext.NewCollector(), table: table, names: map[string]taken{}}
	result := r.run()
	return result, r.List()
}

type reader struct {
	Options
	*hcltext.Collector
	table   *source.File
	columns []column
	comma   *cell // the first cell that can only be meant with a decimal comma
	point   *cell // the first cell with a decimal point
	names   map[string]taken
}

// taken is a label with where it was made, and where again.
type taken struct {
	at, again source.Range
	written   string
}

func (r *reader) refuse(kind string, at source.Range, message, expected, found string) {
	r.Add(source.Problem{Kind: kind, Message: message, Expected: expected, Found: found, At: at})
}

func (r *reader) run() Result {
	rows, ok := r.read(r.table, r.Separator)
	if !ok {
		return Result{}
	}
	if len(rows) == 0 {
		r.refuse("table", r.table.Range(0, 0), "the table is empty: a line of headings is due", "headings", "nothing")
		return Result{}
	}
	if !r.headings(rows[0]) {
		return Result{}
	}
	rows = rows[1:]
	if len(rows) > mostRows {
		r.refuse("size", rows[mostRows].at, fmt.Sprintf("the table has more than %d rows: split it", mostRows), fmt.Sprintf("at most %d rows", mostRows), "more")
		return Result{}
	}
	if len(rows) == 0 {
		r.refuse("table", r.table.Range(0, 0), "the table has headings and no row", "a row for each part", "none")
		return Result{}
	}
	r.findComma(rows)
	r.noteNames(rows)
	result := Result{Rows: len(rows), Whole: true}
	shown := path.Base(r.table.Name)
	var b strings.Builder
	fmt.Fprintf(&b, "# Data sheets from the table %s. Hold every value against the maker's own sheet\n# before anything is built by it.\n", comment(shown))
	for _, row := range rows {
		if text, ok := r.part(row, shown); ok {
			b.WriteString("\n" + text)
			result.Parts++
		}
	}
	if result.Parts == 0 {
		return result
	}
	tidy, problems := hcltext.Tidy(source.NewFile("parts", []byte(b.String())))
	if len(problems) > 0 {
		result.Whole = false
		r.refuse("size", r.table.Range(0, 0), "as a parts file the table cannot be read: "+problems[0].Message+"; split it", "", "")
		return result
	}
	result.Text = tidy
	return result
}

// comment makes a text fit for one line of a comment.
func comment(text string) string {
	text = strings.Map(func(c rune) rune {
		if !unicode.IsPrint(c) { // the name of a file may hold anything
			return ' '
		}
		return c
	}, text)
	return strings.Join(strings.Fields(text), " ")
}

// partKinds are the kinds of part, by name.
func partKinds() []string {
	var names []string
	for _, k := range design.Kinds() {
		if k.Part {
			names = append(names, k.Name)
		}
	}
	return names
}

// partKind gives a kind of part by its name.
func partKind(name string) *design.Kind {
	if !slices.Contains(partKinds(), name) {
		return nil
	}
	return design.KindOf(name)
}
