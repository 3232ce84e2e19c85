// Package source knows texts and places in them: the guard that looks at a
// file before any parser does, positions in bytes, code points and UTF-16
// units, and problems as data.
//
// Use [NewFile] for a text with its position index, [Guard] before parsing it,
// and [Problems] to collect what is wrong. Nothing here panics on any input.
package source

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Position is one place in a file. Line and Column count from 1; Column counts
// Unicode code points. Byte counts from 0. The zero Position is invalid.
type Position struct {
	Line, Column int
	Byte         int
}

// Range is a stretch of one file, End exclusive. The zero Range is invalid: it
// says "no place is known".
type Range struct {
	File       string
	Start, End Position
}

// Valid reports whether the range points anywhere.
func (r Range) Valid() bool { return r.File != "" && r.Start.Line > 0 }

// String gives file:line:column of the start.
func (r Range) String() string {
	if !r.Valid() {
		return r.File
	}
	return fmt.Sprintf("%s:%d:%d", r.File, r.Start.Line, r.Start.Column)
}

// Problem is something wrong with a file, as data. Message says it to a person.
// Kind is one word from a closed list ("syntax", "unit", "unknown_name" ...).
type Problem struct {
	Kind     string
	Message  string
	Block    string // id of the block it stands in, such as "array.south"; may be empty
	Expected string
	Found    string
	Near     string // the nearest known name, where there is one
	At       Range
}

// Error makes a Problem usable as an error: file:line:column: message.
func (p Problem) Error() string {
	var b strings.Builder
	if p.At.File != "" {
		b.WriteString(p.At.String())
		b.WriteString(": ")
	}
	b.WriteString(p.Message)
	if p.Near != "" {
		fmt.Fprintf(&b, " (did you mean %q?)", p.Near)
	}
	return b.String()
}

// Problems accumulate: one bad attribute never hides the next.
type Problems []Problem

// Sort orders problems by file, place and message.
func (ps Problems) Sort() {
	slices.SortStableFunc(ps, func(a, b Problem) int {
		return cmp.Or(
			cmp.Compare(a.At.File, b.At.File),
			cmp.Compare(a.At.Start.Byte, b.At.Start.Byte),
			cmp.Compare(a.Message, b.Message),
		)
	})
}

// Error joins all messages, one a line.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Error()
	}
	return strings.Join(lines, "\n")
}
