package rewrite

import (
	"bytes"
	"errors"
	"strconv"
	"strings"

	"stringline/schema/hcltext"
)

// addition is what a block gets besides what it has: lines, and behind them blocks
// of its own. All that one block gets is one edit, so that nothing meets.
type addition struct {
	edit   int // of Document.edits
	margin string
	tail   string // of a block that stood on one line: what comes before its end
	lines  []string
	blocks []*addedBlock
}

type addedBlock struct {
	keyword, label string
	lines          []string
}

func (a *addition) text(newline string) string {
	lines := strings.Join(a.lines, "\n")
	for _, b := range a.blocks {
		if lines != "" {
			lines += "\n"
		}
		lines += b.keyword + " " + strconv.Quote(b.label) + " {\n" + indent(strings.Join(b.lines, "\n"), "  ", "\n") + "\n}"
	}
	return newline + indent(lines, a.margin+"  ", newline) + a.tail
}

// addition opens a block for what is to be added to it, once.
func (d *Document) addition(b *hcltext.Block) (*addition, error) {
	if b == nil || !b.Open.Valid() || b.Whole.End.Byte <= b.Open.End.Byte {
		return nil, errors.New("adding to a block: it has no end")
	}
	if a := d.added[b.Header.Start.Byte]; a != nil {
		return a, nil
	}
	newline := d.newline()
	a := &addition{margin: d.margin(b.Header.Start.Byte)}
	at := edit{start: b.Open.End.Byte}
	switch n := len(b.Body.Attributes); {
	case b.Open.Start.Line != b.Whole.End.Line:
		if n > 0 {
			at.start = b.Body.Attributes[n-1].Value.At.End.Byte
		}
		at.start = d.behindComment(at.start)
		at.end = at.start
	default:
		at.end = b.Whole.End.Byte - 1
		at.start = max(at.start, len(bytes.TrimRight(d.file.Text[:at.end], " \t")))
		a.tail = newline + a.margin
		if n == 0 {
			break
		}
		first := b.Body.Attributes[0].NameAt.Start.Byte // { a = 1 }: its own attribute goes to a line first
		if err := d.add(edit{start: b.Open.End.Byte, end: first, with: newline + a.margin + "  "}); err != nil {
			return nil, err
		}
	}
	if err := d.add(at); err != nil {
		return nil, err
	}
	a.edit = len(d.edits) - 1
	if d.added == nil {
		d.added = map[int]*addition{}
	}
	d.added[b.Header.Start.Byte] = a
	return a, nil
}

// SetIn is [Document.Set] for a labeled block inside another one. Where that is not
// there it is added; a second attribute of it goes into the same.
func (d *Document) SetIn(b *hcltext.Block, keyword, label, name, literal string) error {
	if b == nil {
		return errors.New("setting " + name + ": no such block")
	}
	for i := range b.Body.Blocks {
		if inner := &b.Body.Blocks[i]; inner.Keyword == keyword && len(inner.Labels) == 1 && inner.Labels[0].Text == label {
			return d.Set(inner, name, literal)
		}
	}
	a, err := d.addition(b)
	if err != nil {
		return err
	}
	var in *addedBlock
	for _, x := range a.blocks {
		if x.keyword == keyword && x.label == label {
			in = x
		}
	}
	if in == nil {
		in = &addedBlock{keyword: keyword, label: label}
		a.blocks = append(a.blocks, in)
	}
	if sets(in.lines, name) {
		return d.meet(b.Header.Start.Byte)
	}
	in.lines = append(in.lines, name+" = "+literal)
	d.edits[a.edit].with = a.text(d.newline())
	return nil
}

// gets tells whether a block is given an attribute that it does not have yet.
func (d *Document) gets(b *hcltext.Block, name string) bool {
	a := d.added[b.Header.Start.Byte]
	return a != nil && sets(a.lines, name)
}

func sets(lines []string, name string) bool {
	for _, line := range lines {
		if strings.HasPrefix(line, name+" = ") {
			return true
		}
	}
	return false
}
