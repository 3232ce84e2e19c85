package datasheet

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"stringline/schema/source"
)

// cell is one cell of a table with its place.
type cell struct {
	text string // without blanks around it
	at   source.Range
}

// row is one row that is not empty.
type row struct {
	cells []cell
	at    source.Range
	line  int
}

const mostColumns = 200

// read guards a table and parts it into rows. ok is false where that cannot be done.
func (r *reader) read(f *source.File, separator rune) (rows []row, ok bool) {
	if problems := source.GuardTable(f); len(problems) > 0 {
		for _, p := range problems {
			r.Add(p)
		}
		return nil, false
	}
	text := strings.TrimPrefix(string(f.Text), "\uFEFF")
	mark := len(f.Text) - len(text)
	if separator == 0 {
		if separator, ok = r.separator(f, text); !ok {
			return nil, false
		}
	}
	parser := csv.NewReader(strings.NewReader(text))
	parser.Comma, parser.FieldsPerRecord = separator, -1
	// place turns what the parser counts, lines and bytes of a line, into a place.
	place := func(line, column int) int {
		start := f.Offset(line-1, 0)
		if line == 1 {
			start = mark
		}
		return start + column - 1
	}
	for {
		fields, err := parser.Read()
		var wrong *csv.ParseError
		switch {
		case errors.Is(err, io.EOF):
			return rows, true
		case errors.As(err, &wrong):
			at := place(wrong.Line, max(wrong.Column, 1))
			r.refuse("syntax", f.Range(at, at+1), "the table cannot be parted into cells here: "+quoteFault(wrong), "a cell in quotes as a whole, each quote inside it doubled", "a quote alone")
			return nil, false
		case err != nil:
			r.refuse("syntax", f.Range(0, 0), "reading the table: "+err.Error(), "", "")
			return nil, false
		}
		one := row{}
		for i, field := range fields {
			line, column := parser.FieldPos(i)
			start := place(line, column)
			end := start + len(field)
			if start < len(f.Text) && f.Text[start] == '"' {
				end += 2
			}
			one.cells = append(one.cells, cell{text: strings.Trim(field, blanks), at: f.Range(start, min(end, len(f.Text)))})
		}
		one.at, one.line = one.cells[0].at, one.cells[0].at.Start.Line
		if len(one.cells) > mostColumns {
			r.refuse("size", one.at, fmt.Sprintf("the row has %d cells; at most %d are read", len(one.cells), mostColumns), "", "")
			return nil, false
		}
		if slices.ContainsFunc(one.cells, func(c cell) bool { return c.text != "" }) {
			rows = append(rows, one)
		}
	}
}

// blanks are what stands around a value and says nothing.
const blanks = " \t\r\n\u00a0\u202f"

func quoteFault(e *csv.ParseError) string {
	if errors.Is(e.Err, csv.ErrQuote) {
		return "a quote inside a cell that does not end there, or one that is never closed"
	}
	return "a quote in a cell that does not begin with one"
}

// separator finds what parts the columns of the first line.
func (r *reader) separator(f *source.File, text string) (rune, bool) {
	var count [3]int
	marks := [3]rune{',', ';', '\t'}
	quoted := false
	for _, c := range text {
		if c == '\n' && !quoted {
			break
		}
		if c == '"' {
			quoted = !quoted
		}
		if i := slices.Index(marks[:], c); i >= 0 && !quoted {
			count[i]++
		}
	}
	best := 0
	for i := range count {
		if count[i] > count[best] {
			best = i
		}
	}
	for i := range count {
		if i != best && count[i] == count[best] && count[best] > 0 {
			r.refuse(KindSeparator, f.Range(0, 0), "what parts the columns is not clear from the headings", "one mark between the columns", "several")
			return 0, false
		}
	}
	return marks[best], true
}
