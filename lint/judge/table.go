package judge

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"

	"stringline/schema/quantity"
	"stringline/schema/source"
)

// table is one data/NAME.json: rows of axis values and a result. Numbers are
// held in SI. Rules name a table and never see into it.
type table struct {
	name   string
	title  string
	source string // a key of the codebook's sources
	status string // read, transcribed, from memory
	kind   kind
	unit   quantity.Unit
	axes   []axis
	rows   []row
}

type axis struct {
	name  string
	kind  kind
	unit  quantity.Unit
	match string // up_to, down_to, exact
}

type row struct {
	at    []cell
	value cell
	none  bool // null: the source gives no value for this row
}

type cell struct {
	si   float64
	word string
	yes  bool
}

// tableFile is the file as written.
type tableFile struct {
	Title  string `json:"title"`
	Source string `json:"source"`
	Status string `json:"status"`
	Unit   string `json:"unit"`
	Axes   []struct {
		Name  string `json:"name"`
		Unit  string `json:"unit"`
		Match string `json:"match"`
	} `json:"axes"`
	Rows [][]any `json:"rows"`
}

var (
	matches  = []string{"up_to", "down_to", "exact"}
	statuses = []string{"read", "transcribed", "from memory"}
)

// largestTable bounds the rows of one table.
const largestTable = 10000

// readTable reads data/NAME.json strictly. sources are the codebook's keys.
//
// A cell is a number in its column's unit, a quantity as text ("10 AWG") where
// the column has a unit, a word, or true and false. The last cell of a row may
// be null: the source leaves it empty.
func readTable(f *source.File, name string, sources []string) (*table, source.Problems) {
	var problems source.Problems
	bad := func(offset int, format string, args ...any) {
		problems = append(problems, source.Problem{Kind: "table", Message: fmt.Sprintf(format, args...), At: f.Range(offset, offset)})
	}
	var file tableFile
	decoder := json.NewDecoder(bytes.NewReader(f.Text))
	decoder.DisallowUnknownFields()
	decoder.UseNumber()
	if err := decoder.Decode(&file); err != nil {
		offset := int(decoder.InputOffset())
		var syntax *json.SyntaxError
		var kind *json.UnmarshalTypeError
		switch {
		case errors.As(err, &syntax):
			offset = int(syntax.Offset)
		case errors.As(err, &kind):
			offset = int(kind.Offset)
		}
		bad(offset, "reading the table: %s", strings.TrimPrefix(err.Error(), "json: "))
		return nil, problems
	}
	if _, err := decoder.Token(); err != io.EOF {
		bad(int(decoder.InputOffset()), "reading the table: there is more behind its end")
		return nil, problems
	}
	t := &table{name: name, title: file.Title, source: file.Source, status: file.Status}
	if file.Title == "" {
		bad(0, "the table has no title")
	}
	if !slices.Contains(statuses, file.Status) {
		bad(0, "status is one of %s, not %q", strings.Join(statuses, ", "), file.Status)
	}
	if !slices.Contains(sources, file.Source) {
		problems = append(problems, source.Problem{Kind: "unknown_name", At: f.Range(0, 0), Near: source.Nearest(file.Source, sources),
			Message: fmt.Sprintf("source %q is no source of the codebook", file.Source)})
	}
	var ok bool
	if t.kind, t.unit, ok = columnUnit(file.Unit); !ok {
		bad(0, "unit %q is not known", file.Unit)
	}
	for i, a := range file.Axes {
		k, u, ok := columnUnit(a.Unit)
		switch {
		case a.Name == "":
			bad(0, "axis %d has no name", i+1)
		case !ok:
			bad(0, "axis %q: unit %q is not known", a.Name, a.Unit)
		case !slices.Contains(matches, a.Match):
			bad(0, "axis %q: match is one of %s, not %q", a.Name, strings.Join(matches, ", "), a.Match)
		case k != number && a.Match != "exact":
			bad(0, "axis %q: words and yes/no match exactly", a.Name)
		}
		t.axes = append(t.axes, axis{name: a.Name, kind: k, unit: u, match: a.Match})
	}
	if len(file.Axes) == 0 {
		bad(0, "the table has no axes")
	}
	if len(file.Rows) == 0 || len(file.Rows) > largestTable {
		bad(0, "a table has 1 to %d rows, not %d", largestTable, len(file.Rows))
	}
	if len(problems) > 0 {
		return nil, problems
	}
	at := rowOffsets(f.Text)
	for i, cells := range file.Rows {
		r, err := t.readRow(cells)
		if err != nil {
			bad(at[min(i, len(at)-1)], "row %d: %v", i+1, err)
			continue
		}
		t.rows = append(t.rows, r)
	}
	for i, n := range t.twice() {
		bad(at[min(n, len(at)-1)], "row %d repeats the axis values of an earlier row", n+1)
		if i == 9 {
			break
		}
	}
	if len(problems) > 0 {
		return nil, problems
	}
	return t, nil
}

// columnUnit reads a unit of a table: a unit of the unit table, "word" or "yes_no".
func columnUnit(symbol string) (kind, quantity.Unit, bool) {
	switch symbol {
	case "word":
		return word, quantity.Unit{}, true
	case "yes_no":
		return yesNo, quantity.Unit{}, true
	}
	u, ok := quantity.Lookup(symbol)
	return number, u, ok
}

func (t *table) readRow(cells []any) (row, error) {
	if len(cells) != len(t.axes)+1 {
		return row{}, fmt.Errorf("%d cells, where %d axes and a value are %d", len(cells), len(t.axes), len(t.axes)+1)
	}
	var r row
	for i, a := range t.axes {
		c, err := readCell(cells[i], a.kind, a.unit)
		if err != nil {
			return row{}, fmt.Errorf("%s: %w", a.name, err)
		}
		r.at = append(r.at, c)
	}
	last := cells[len(cells)-1]
	if last == nil {
		r.none = true
		return r, nil
	}
	var err error
	if r.value, err = readCell(last, t.kind, t.unit); err != nil {
		return row{}, fmt.Errorf("value: %w", err)
	}
	return r, nil
}

func readCell(v any, k kind, u quantity.Unit) (cell, error) {
	switch x := v.(type) {
	case string:
		switch {
		case k == word && x != "":
			return cell{word: x}, nil
		case k == number && u.Symbol != "":
			q, err := quantity.ParseAs(x, u.Symbol)
			if err != nil {
				return cell{}, err
			}
			return cell{si: q.SI}, nil
		}
	case bool:
		if k == yesNo {
			return cell{yes: x}, nil
		}
	case json.Number:
		f, err := x.Float64()
		if k == number && err == nil {
			if si := u.ToSI(f); !math.IsNaN(si) && !math.IsInf(si, 0) {
				return cell{si: si}, nil
			}
		}
	}
	return cell{}, fmt.Errorf("%v is not %s", v, k)
}

// rowOffsets finds where each row starts in the text, for positions.
func rowOffsets(text []byte) []int {
	offsets := []int{}
	depth, inRows := 0, false
	decoder := json.NewDecoder(bytes.NewReader(text))
	for {
		token, err := decoder.Token()
		if err != nil {
			break
		}
		switch token {
		case json.Delim('['), json.Delim('{'):
			depth++
			if inRows && depth == 3 {
				offsets = append(offsets, int(decoder.InputOffset())-1)
			}
		case json.Delim(']'), json.Delim('}'):
			depth--
			if depth == 1 {
				inRows = false
			}
		case "rows":
			inRows = inRows || depth == 1
		}
	}
	if len(offsets) == 0 {
		offsets = append(offsets, 0)
	}
	return offsets
}

// twice lists rows whose axis values stand in an earlier row already.
func (t *table) twice() []int {
	seen := map[string]bool{}
	var again []int
	for i, r := range t.rows {
		key := fmt.Sprintf("%v", r.at)
		if seen[key] {
			again = append(again, i)
		}
		seen[key] = true
	}
	return again
}
