package report

import (
	"io"
	"strconv"
	"strings"

	"stringline/schema/quantity"
)

// page collects the lines of a text. Everything put on it is escaped, measured
// in columns and only then painted.
type page struct {
	b     strings.Builder
	style Style
	width int // columns that a line may fill
}

// newPage clamps the width: below 40 nothing can be laid out, above 100 lines
// grow too long to read. The last column stays free.
func newPage(opts Page) *page {
	width := opts.Width
	if width <= 0 {
		width = 80
	}
	return &page{style: opts.Style, width: min(max(width, 40), 100) - 1}
}

// narrow reports a page on which an item's number, labels and values do not
// stand side by side.
func (p *page) narrow() bool { return p.width < 56 }

// labels and values are the columns of an item: labels, then what they label.
func (p *page) labels() int {
	if p.narrow() {
		return 2
	}
	return 9
}

func (p *page) values() int { return p.labels() + 9 }

// take gives what stands on the page and empties it.
func (p *page) take() string {
	text := strings.Clone(p.b.String()) // without the room to grow that is left
	p.b.Reset()
	return text
}

func (p *page) flush(w io.Writer) error {
	_, err := io.WriteString(w, p.b.String())
	p.b.Reset()
	return err
}

// line is one line being written.
type line struct {
	p     *page
	at    int // columns filled
	space int // columns owed before the next text, so that no line ends in spaces
}

func (p *page) line() *line { return &line{p: p} }

// blank ends a section.
func (p *page) blank() { p.b.WriteByte('\n') }

func (l *line) put(text string, with ink) *line {
	text = Escape(text)
	if text == "" {
		return l
	}
	l.p.b.WriteString(strings.Repeat(" ", l.space))
	l.space = 0
	l.p.b.WriteString(with.paint(l.p.style, text))
	l.at += columns(text)
	return l
}

// to moves to a column; where the line is there already it leaves one space.
func (l *line) to(column int) *line {
	gap := column - l.at
	if gap <= 0 && l.at > 0 && l.space == 0 {
		gap = 1
	}
	if gap > 0 {
		l.space += gap
		l.at += gap
	}
	return l
}

// gap leaves one space.
func (l *line) gap() *line { return l.to(l.at) }

// right puts text so that it ends before the column.
func (l *line) right(column int, text string, with ink) *line {
	return l.to(column-columns(Escape(text))).put(text, with)
}

func (l *line) end() { l.p.b.WriteByte('\n') }

// wrap fills the rest of the line with the text's words and goes on below at
// the same column.
func (l *line) wrap(text string, with ink) {
	l.wrapPieces(glued(strings.Fields(text)), " ", with)
}

// glued joins a number and the unit behind it, so that no line ends between them.
func glued(words []string) []string {
	var pieces []string
	for _, word := range words {
		if last := len(pieces) - 1; last >= 0 && isNumber(pieces[last]) {
			if _, unit := quantity.Lookup(strings.TrimRight(word, ".,;:)")); unit {
				pieces[last] += " " + word
				continue
			}
		}
		pieces = append(pieces, word)
	}
	return pieces
}

// isNumber reports a number, or its empty entry, that a unit may follow.
func isNumber(word string) bool {
	word = strings.TrimLeft(word, "(-")
	if word == "_____" {
		return true
	}
	_, err := strconv.ParseFloat(word, 64)
	return err == nil
}

// wrapPieces is wrap for pieces that must not be broken, with what stands
// between two on one line. A piece that is longer than the column is left whole, for
// paths stay fit to be copied: it stands on a line of its own, further to
// the left.
func (l *line) wrapPieces(pieces []string, between string, with ink) {
	indent := l.at
	var row []string // what the line takes, painted in one stroke
	filled := 0
	for _, piece := range pieces {
		piece = Escape(piece)
		need := columns(piece)
		if over := strings.TrimLeft(piece, " "); indent > leastIndent && indent+columns(over) > l.p.width+1 { // it may take the last column
			if len(row) > 0 {
				l.put(strings.Join(row, between), with)
			}
			l.space = 0 // nothing follows on this line
			if l.written() {
				l.end()
			}
			at := leastIndent
			if wide := at + 2; wide+columns(over) <= l.p.width {
				at = wide
			}
			l.p.line().to(at).put(over, with).end()
			*l = line{p: l.p, at: indent, space: indent}
			row, filled = nil, 0
			continue
		}
		if len(row) > 0 && indent+filled+len(between)+need > l.p.width {
			l.put(strings.Join(row, between), with).end()
			*l = line{p: l.p, at: indent, space: indent}
			row, filled = nil, 0
			piece = strings.TrimLeft(piece, " ")
			need = columns(piece)
		}
		if len(row) > 0 {
			filled += len(between)
		}
		row = append(row, piece)
		filled += need
	}
	if len(row) == 0 && !l.written() && len(pieces) > 0 {
		return // the last piece stands on its own line
	}
	l.put(strings.Join(row, between), with).end()
}

// leastIndent is where what is too long for its column begins at the least.
const leastIndent = 2

// written reports whether anything stands on the line so far.
func (l *line) written() bool {
	text := l.p.b.String()
	return text != "" && !strings.HasSuffix(text, "\n")
}
