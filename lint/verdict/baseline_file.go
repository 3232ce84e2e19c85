package verdict

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"path"
	"slices"
	"strconv"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"stringline/schema/source"
)

// A baseline is a file of comma-separated values (RFC 4180) with one finding a
// line, sorted, so that two branches that accept different findings merge and a
// review shows what was accepted. The head line names the columns.
var columns = []string{"file", "rule", "about", "which", "verdict", "grade", "found", "spare", "headroom", "accepted"}

const (
	columnFile = iota
	columnRule
	columnAbout
	columnWhich
	columnVerdict
	columnGrade
	columnFound
	columnSpare
	columnHeadroom
	columnAccepted
)

// WriteBaseline gives a baseline's text for some findings, whatever their order.
func WriteBaseline(lines []Accepted) ([]byte, error) {
	lines = slices.Clone(lines)
	sortAccepted(lines)
	var b bytes.Buffer
	out := csv.NewWriter(&b)
	rows := [][]string{columns}
	for i := range lines {
		a := &lines[i]
		row := []string{a.File, a.Rule, a.About, a.Which, string(a.Outcome), string(a.Grade), a.Found, "", "", a.Since}
		if a.Spare != nil {
			row[columnSpare] = strings.TrimSpace(nine(a.Spare.Value) + " " + a.Spare.Unit)
		}
		if a.Headroom != nil {
			row[columnHeadroom] = nine(*a.Headroom)
		}
		for n, text := range row {
			if bad := unfit(text); bad != "" {
				return nil, fmt.Errorf("accepting %s on %s in %q: %s holds %s, which a line of a baseline cannot", a.Rule, a.About, a.File, columns[n], bad)
			}
		}
		rows = append(rows, row)
	}
	if err := out.WriteAll(rows); err != nil {
		return nil, fmt.Errorf("writing the baseline: %w", err)
	}
	if b.Len() > MostBytes {
		return nil, fmt.Errorf("writing the baseline: %d findings are more than one file can hold; use one for each folder", len(lines))
	}
	return b.Bytes(), nil
}

// unfit names what keeps a text from standing on one line of a file that people
// read, or "".
func unfit(text string) string {
	for len(text) > 0 {
		r, size := utf8.DecodeRuneInString(text)
		if r == utf8.RuneError && size == 1 {
			return "bytes that are no text"
		}
		if r != 0xA0 && !unicode.IsPrint(r) {
			return fmt.Sprintf("the character %U", r)
		}
		text = text[size:]
	}
	return ""
}

// ReadBaseline reads a baseline. Where anything in it is wrong there is no
// baseline but a problem for each line that is: a line that was damaged must not
// accept anything, nor be lost when the file is written anew.
func ReadBaseline(name string, text []byte) (*Baseline, source.Problems) {
	r := reader{baseline: &Baseline{Name: name, byFile: map[string][]int{}}, seen: map[string]int{}}
	r.read(text)
	if len(r.problems) > 0 {
		r.problems.Sort()
		return nil, r.problems
	}
	b := r.baseline
	sortAccepted(b.Lines)
	for i := range b.Lines {
		b.byFile[b.Lines[i].File] = append(b.byFile[b.Lines[i].File], i)
	}
	return b, nil
}

// reader goes through a baseline line by line: no field holds a line's end, so a
// line can be damaged without harm to the next.
type reader struct {
	baseline *Baseline
	seen     map[string]int // lines by key
	problems source.Problems
}

func (r *reader) problem(at source.Range, expected, found, format string, args ...any) {
	r.problems = append(r.problems, source.Problem{
		Kind: "baseline", Message: "reading the baseline: " + fmt.Sprintf(format, args...), Expected: expected, Found: found, At: at,
	})
}

// MostBytes is how long a baseline may be: some hundred thousand lines.
const MostBytes = 16 << 20

// at gives a place: a stretch of bytes in a line that has this number and begins
// at this byte of the file. (Designs are held to a far smaller size than a
// baseline over thousands of them may have, so each line is indexed by itself.)
func (r *reader) at(number, start int, line string, from, to int) source.Range {
	at := source.NewFile(r.baseline.Name, []byte(line)).Range(from, to)
	for _, p := range []*source.Position{&at.Start, &at.End} {
		p.Line = number
		p.Byte += start
	}
	return at
}

// byteOrderMark may open a file that a spreadsheet wrote.
const byteOrderMark = "\uFEFF"

func (r *reader) read(text []byte) {
	if len(text) > MostBytes {
		r.problem(r.at(1, 0, "", 0, 0), "", "", "longer than %d bytes", MostBytes)
		return
	}
	start, number := 0, 0
	if bytes.HasPrefix(text, []byte(byteOrderMark)) {
		start = len(byteOrderMark)
	}
	for start < len(text) {
		end, next := len(text), len(text)
		if n := bytes.IndexByte(text[start:], '\n'); n >= 0 {
			end, next = start+n, start+n+1
		}
		line := strings.TrimSuffix(string(text[start:end]), "\r")
		number++
		at := r.at(number, start, line, 0, len(line))
		switch {
		case conflict(line):
			r.problem(at, "", "", "a conflict marker of a merge; keep the lines of both sides that still hold, and take the marker out")
		case number == 1:
			if fields, _, problem := split(line); problem != nil || !slices.Equal(fields, columns) {
				r.problem(at, strings.Join(columns, ","), line, "the first line does not name the columns of a baseline")
				return // nothing below can be trusted to mean what it seems to
			}
		case strings.TrimSpace(line) == "":
			r.problem(at, "one finding", "", "an empty line")
		default:
			r.line(number, start, line, at)
		}
		start = next
	}
	if number == 0 {
		r.problem(r.at(1, 0, "", 0, 0), strings.Join(columns, ","), "", "the file is empty; a baseline without findings has its first line")
	}
}

// conflict tells a marker that git leaves where it could not merge.
func conflict(line string) bool {
	for _, marker := range []string{"<<<<<<<", "=======", ">>>>>>>", "|||||||"} {
		if strings.HasPrefix(line, marker) {
			return true
		}
	}
	return false
}

// split takes one line apart and tells where in it each field begins (bytes from 0).
func split(line string) (fields []string, begins []int, problem *csv.ParseError) {
	in := csv.NewReader(strings.NewReader(line))
	in.FieldsPerRecord = -1
	fields, err := in.Read()
	if err != nil {
		if !errors.As(err, &problem) {
			problem = &csv.ParseError{Column: 1, Err: io.ErrUnexpectedEOF}
		}
		return nil, nil, problem
	}
	for i := range fields {
		_, column := in.FieldPos(i)
		begins = append(begins, column-1)
	}
	return fields, begins, nil
}

func (r *reader) line(number, start int, line string, whole source.Range) {
	fields, begins, broken := split(line)
	if broken != nil {
		at := min(max(broken.Column-1, 0), len(line))
		r.problem(r.at(number, start, line, at, len(line)), "", "", "a damaged line: %v", broken.Err)
		return
	}
	if len(fields) != len(columns) {
		r.problem(whole, fmt.Sprint(len(columns)), fmt.Sprint(len(fields)), "a damaged line: %d fields, of which there must be %d", len(fields), len(columns))
		return
	}
	before := len(r.problems)
	place := func(column int) source.Range {
		end := len(line)
		if column+1 < len(begins) {
			end = begins[column+1] - 1
		}
		return r.at(number, start, line, begins[column], end)
	}
	wrong := func(column int, expected, format string, args ...any) {
		r.problem(place(column), expected, fields[column], columns[column]+": "+format, args...)
	}
	for i, text := range fields {
		if bad := unfit(text); bad != "" {
			wrong(i, "text that can be shown", "holds %s", bad)
		}
	}
	a := Accepted{
		File: fields[columnFile], Rule: fields[columnRule], About: fields[columnAbout], Which: fields[columnWhich],
		Outcome: Outcome(fields[columnVerdict]), Grade: Grade(fields[columnGrade]), Found: fields[columnFound], Since: fields[columnAccepted],
		At: whole, keyAt: place(columnRule),
	}
	switch {
	case a.File == "" || path.IsAbs(a.File) || a.File != path.Clean(a.File) || strings.Contains(a.File, `\`):
		wrong(columnFile, "a path relative to the baseline's folder, with /", "no such path")
	case a.Rule == "" || a.About == "":
		wrong(columnRule, "the id of a rule, and what it is about", "rule or about is empty")
	}
	if a.Outcome != Breaks && a.Outcome != Unproven {
		wrong(columnVerdict, "breaks or unproven", "no verdict that can be accepted")
	}
	switch a.Grade {
	case Fix, Advise:
	case Stop:
		wrong(columnGrade, "fix or advise", "a stop cannot be accepted")
	default:
		wrong(columnGrade, "fix or advise", "no grade")
	}
	if day, err := time.Parse(time.DateOnly, a.Since); err != nil || day.Format(time.DateOnly) != a.Since {
		wrong(columnAccepted, "a day such as 2026-05-02", "no day")
	}
	if text := fields[columnHeadroom]; text != "" {
		if v, err := strconv.ParseFloat(text, 64); err != nil || !finite(v) {
			wrong(columnHeadroom, "a number such as -0.13, a share of the limit", "no number")
		} else {
			a.Headroom = &v
		}
	}
	if text := fields[columnSpare]; text != "" {
		number, unit, _ := strings.Cut(text, " ")
		if v, err := strconv.ParseFloat(number, 64); err != nil || !finite(v) {
			wrong(columnSpare, "a quantity such as -19.8 V", "no quantity")
		} else {
			a.Spare = &Spare{Value: v, Unit: unit}
		}
	}
	if first, twice := r.seen[a.Key()]; twice {
		r.problem(whole, "one line", fmt.Sprint(first), "the same finding as in line %d; keep one of them", first)
	} else {
		r.seen[a.Key()] = whole.Start.Line
	}
	if len(r.problems) == before {
		r.baseline.Lines = append(r.baseline.Lines, a)
	}
}

// RuleAt is where the line names its rule.
func (a *Accepted) RuleAt() source.Range { return a.keyAt }
