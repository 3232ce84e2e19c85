package source

import (
	"bytes"
	"sort"
	"unicode/utf8"
)

// File is a text with what is needed to find places in it. Make it with
// [NewFile]; it may then be read by several goroutines at once.
type File struct {
	Name string // as shown to people, "/" between folders
	Text []byte
	line []mark // where each line starts
	step []mark // a mark every stride bytes, so that a long line costs no long count
}

// mark is a byte offset with the code points and UTF-16 units before it.
type mark struct{ byte, points, units int }

// stride is how many bytes a search for a column may have to walk.
const stride = 512

// byteOrderMark is the UTF-8 one. Editors show nothing for it, so it takes no column.
const byteOrderMark = "\uFEFF"

// NewFile indexes a text. The name is the one shown in messages.
//
// A line ends with LF, CRLF or a lone CR, as editors and the language server
// protocol count them. (The guard refuses a lone CR, so that the parser, which
// does not count it, never sees one.) A UTF-8 byte order mark at the start
// takes no column. A byte that is not UTF-8 counts as one code point.
//
// Of a text longer than [MaxBytes] only the beginning is indexed: the guard
// refuses it, and places beyond are held to the last indexed one.
func NewFile(name string, text []byte) *File {
	f := &File{Name: name, Text: text}
	f.line, f.step = index(text[:min(len(text), MaxBytes)])
	return f
}

func index(text []byte) (lines, steps []mark) {
	var m mark
	if len(text) >= len(byteOrderMark) && string(text[:len(byteOrderMark)]) == byteOrderMark {
		m.byte = len(byteOrderMark)
	}
	// Room for all lines at once: growing would cost several times as much.
	lines = make([]mark, 1, 2+bytes.Count(text, []byte{'\n'}))
	steps = make([]mark, 1, 3+len(text)/stride)
	lines[0], steps[0] = m, m
	for m.byte < len(text) {
		size, units := width(text[m.byte:])
		lineEnd := text[m.byte] == '\n' ||
			text[m.byte] == '\r' && (m.byte+1 == len(text) || text[m.byte+1] != '\n')
		m.byte += size
		m.points++
		m.units += units
		if lineEnd {
			lines = append(lines, m)
		}
		if m.byte-steps[len(steps)-1].byte >= stride {
			steps = append(steps, m)
		}
	}
	return lines, append(steps, m)
}

// width gives the bytes and UTF-16 units of the first code point.
func width(text []byte) (size, units int) {
	if text[0] < utf8.RuneSelf {
		return 1, 1
	}
	r, size := utf8.DecodeRune(text)
	if r > 0xFFFF {
		return size, 2
	}
	return size, 1
}

// marks gives the index; a File that was not made by NewFile gets one each time.
func (f *File) marks() (lines, steps []mark) {
	if len(f.line) == 0 || len(f.step) == 0 {
		return index(f.Text[:min(len(f.Text), MaxBytes)])
	}
	return f.line, f.step
}

// locate walks to a byte offset from the nearest mark before it. An offset
// inside a code point is led back to where that begins. Offsets are clamped.
func (f *File) locate(byteOffset int) (at, start mark, line int) {
	lines, steps := f.marks()
	byteOffset = max(byteOffset, lines[0].byte)
	byteOffset = min(byteOffset, steps[len(steps)-1].byte)
	line = sort.Search(len(lines), func(i int) bool { return lines[i].byte > byteOffset }) - 1
	start = lines[line]
	at = steps[sort.Search(len(steps), func(i int) bool { return steps[i].byte > byteOffset })-1]
	if at.byte < start.byte {
		at = start
	}
	for at.byte < byteOffset {
		size, units := width(f.Text[at.byte:])
		if at.byte+size > byteOffset {
			break
		}
		at.byte += size
		at.points++
		at.units += units
	}
	return at, start, line
}

// Position gives the place of a byte offset: line and column from 1, the
// column in code points. An offset outside the text is clamped to its ends.
func (f *File) Position(byteOffset int) Position {
	at, start, line := f.locate(byteOffset)
	return Position{Line: line + 1, Column: at.points - start.points + 1, Byte: at.byte}
}

// Range gives the stretch between two byte offsets, the end exclusive.
func (f *File) Range(startByte, endByte int) Range {
	return Range{
		File:  f.Name,
		Start: f.Position(startByte),
		End:   f.Position(max(startByte, endByte)),
	}
}

// UTF16 gives a position as editors count it: line and character from 0, the
// character in UTF-16 units. It goes by p.Byte; where that does not belong to
// p.Line and p.Column (a position made by hand) it goes by those.
func (f *File) UTF16(p Position) (line, character int) {
	at, start, line := f.locate(p.Byte)
	if p.Line == line+1 && p.Column == at.points-start.points+1 || p.Line < 1 {
		return line, at.units - start.units
	}
	lines, _ := f.marks()
	line = min(p.Line, len(lines)) - 1
	end := f.lineEnd(line)
	at = lines[line]
	for column := 1; column < p.Column && at.byte < end; column++ {
		size, units := width(f.Text[at.byte:])
		at.byte += size
		at.units += units
	}
	return line, at.units - lines[line].units
}

// Offset is the way back: the byte offset of a place that an editor names by
// line and UTF-16 character, both from 0. A character beyond its line is held
// to the line's end, one inside a surrogate pair to the pair's start.
func (f *File) Offset(line, utf16 int) int {
	lines, steps := f.marks()
	if line < 0 {
		return lines[0].byte
	}
	if line >= len(lines) {
		return steps[len(steps)-1].byte
	}
	start, end := lines[line], f.lineEnd(line)
	want := start.units + max(utf16, 0)
	at := start
	k := sort.Search(len(steps), func(i int) bool { return steps[i].units > want }) - 1
	if k >= 0 && steps[k].byte > start.byte {
		at = steps[k]
	}
	if at.byte >= end {
		return end
	}
	for at.byte < end {
		size, units := width(f.Text[at.byte:])
		if at.units+units > want {
			break
		}
		at.byte += size
		at.units += units
	}
	return at.byte
}

// lineEnd is the offset of a line's end mark (LF, CR or CRLF) or of the text's end.
func (f *File) lineEnd(line int) int {
	lines, steps := f.marks()
	if line+1 >= len(lines) {
		return steps[len(steps)-1].byte
	}
	end := lines[line+1].byte - 1
	if end > lines[line].byte && f.Text[end] == '\n' && f.Text[end-1] == '\r' {
		end--
	}
	return end
}
