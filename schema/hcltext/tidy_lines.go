package hcltext

import (
	"bytes"
	"slices"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// textLine is one line of a text with LF line ends, and what its tokens make of it.
type textLine struct {
	text    []byte // without line end and blanks before it
	inside  bool   // it begins inside a comment of several lines
	comment bool   // nothing but a comment, or a part of one
	before  int    // brackets open where it begins
	after   int    // brackets open where it ends
	opens   bool   // its last token but a comment opens a bracket
	closes  bool   // its first token closes one
}

func (l *textLine) blank() bool { return len(l.text) == 0 && !l.inside }

// readLines cuts a text into lines. No token but a comment goes over several.
func readLines(text []byte) []textLine {
	var lines []textLine
	var starts []int
	at := 0
	for line := range bytes.Lines(text) {
		starts = append(starts, at)
		at += len(line)
		lines = append(lines, textLine{text: bytes.TrimRight(line, " \t\n"), comment: true})
	}
	lexed, _ := hclsyntax.LexConfig(text, "", hcl.InitialPos)
	depth, current, fresh := 0, 0, true
	// reach moves on to the line that holds a byte.
	reach := func(offset int) {
		for current+1 < len(lines) && starts[current+1] <= offset {
			lines[current].after = depth
			current++
			lines[current].before, fresh = depth, true
		}
	}
	for _, t := range lexed {
		switch t.Type {
		case hclsyntax.TokenNewline, hclsyntax.TokenEOF:
			continue
		}
		if len(lines) == 0 {
			break
		}
		reach(t.Range.Start.Byte)
		if t.Type == hclsyntax.TokenComment {
			last := t.Range.End.Byte - 1
			for i := current + 1; i < len(lines) && starts[i] <= last; i++ {
				lines[i].inside = true
			}
			reach(last)
			fresh = fresh && !bytes.HasPrefix(t.Bytes, []byte("/*"))
			continue
		}
		line := &lines[current]
		line.comment, line.opens = false, false
		switch t.Type {
		case hclsyntax.TokenOBrace, hclsyntax.TokenOBrack:
			depth++
			line.opens = true
		case hclsyntax.TokenCBrace, hclsyntax.TokenCBrack:
			depth--
			line.closes = line.closes || fresh
		}
		fresh = false
	}
	for i := current; i < len(lines); i++ {
		lines[i].after = depth
		if i > current {
			lines[i].before = depth
		}
	}
	return lines
}

// blankLines puts blank lines where the layout wants them, takes away the others,
// and the blanks at the ends of lines. It changes nothing else.
func blankLines(text []byte) []byte {
	lines := readLines(text)
	due := apart(lines)
	var b bytes.Buffer
	b.Grow(len(text) + len(text)/16)
	gap := false // blank lines stand between the last line written and this one
	var last *textLine
	for i := range lines {
		line := &lines[i]
		if line.blank() {
			gap = true
			continue
		}
		if last != nil && (gap && !last.opens && !line.closes || due[i]) {
			b.WriteByte('\n')
		}
		b.Write(line.text)
		b.WriteByte('\n')
		gap, last = false, line
	}
	return b.Bytes()
}

// apart tells before which lines a blank line is due: at the top level between
// two things of which one takes several lines.
func apart(lines []textLine) []bool {
	due := make([]bool, len(lines))
	for i := range lines {
		line := &lines[i]
		if line.blank() || line.comment || line.inside || line.before != 0 {
			continue
		}
		first := i // with the comment lines right above it
		for first > 0 && lines[first-1].comment && !lines[first-1].blank() {
			first--
		}
		if first == 0 || lines[first].inside {
			continue
		}
		before := &lines[first-1]
		due[first] = !before.blank() && (line.after > 0 || before.before > 0)
	}
	return slices.Clip(due)
}
