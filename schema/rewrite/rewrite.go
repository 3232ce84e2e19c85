// Package rewrite changes a text of the language at source ranges. What is not
// changed keeps its bytes: comments, order, blank lines, line ends.
//
// Use [Open] on a text, then [Document.Set], [Document.Remove], [Document.Insert],
// [Document.Replace] and [Document.Silence], and [Document.Text] for the result.
// The edits are splices of bytes; HCL's own writer is not used, since it reorders
// attributes and strands comments. The result is laid out by the formatter where
// the text was so before, read again, and held against what was meant: every
// block and value that no edit touched, and every comment, must be there as it
// was. An edit that would do more than was asked is an error, and there is no
// text.
package rewrite

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strings"

	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// Document is one text with the edits that it is to have. It serves one goroutine.
type Document struct {
	file     *source.File
	body     *hcltext.Body
	comments []hcltext.Comment
	edits    []edit
	added    map[int]*addition // to blocks, by where their headers begin
}

// edit puts with in place of the bytes from start to end.
type edit struct {
	start, end int
	with       string
	// silent marks an edit that turns blocks into comments.
	silent bool
}

// Open reads a text. One that has any problem is not changed: what it means is
// not known.
func Open(name string, text []byte) (*Document, source.Problems) {
	file := source.NewFile(name, text)
	body, problems, _ := hcltext.Parse(file)
	if len(problems) > 0 {
		return nil, problems
	}
	return &Document{file: file, body: body, comments: hcltext.Comments(text)}, nil
}

// Fresh gives the same text without edits.
func (d *Document) Fresh() *Document {
	return &Document{file: d.file, body: d.body, comments: d.comments}
}

// Body is what the text holds.
func (d *Document) Body() *hcltext.Body { return d.body }

// Source gives the bytes of a range of the text.
func (d *Document) Source(at source.Range) string {
	return string(d.file.Text[at.Start.Byte:at.End.Byte])
}

// At finds the block whose header begins at a byte of the text; nil where there
// is none.
func (d *Document) At(start int) *hcltext.Block { return blockAt(d.body, start) }

func blockAt(in *hcltext.Body, start int) *hcltext.Block {
	for i := range in.Blocks {
		b := &in.Blocks[i]
		switch {
		case b.Header.Start.Byte == start:
			return b
		case b.Whole.Start.Byte <= start && start < b.Whole.End.Byte:
			return blockAt(&b.Body, start)
		}
	}
	return nil
}

// Set gives an attribute of a block a value, written as in a file (a text with
// its quotes). Where the block has the attribute its value is replaced; else a
// line is added behind the block's last attribute.
func (d *Document) Set(b *hcltext.Block, name, literal string) error {
	if b == nil {
		return fmt.Errorf("setting %s: no such block", name)
	}
	for i := range b.Body.Attributes {
		if a := &b.Body.Attributes[i]; a.Name == name {
			return d.Replace(a.Value.At, literal)
		}
	}
	if d.gets(b, name) {
		return d.meet(b.Header.Start.Byte)
	}
	return d.Insert(b, name+" = "+literal)
}

// Remove takes an attribute out of a block, with the whole of its line where it
// stands alone there; a comment on that line stays. Taking out what is not there
// does nothing.
func (d *Document) Remove(b *hcltext.Block, name string) error {
	if b == nil {
		return fmt.Errorf("taking %s out: no such block", name)
	}
	for i := range b.Body.Attributes {
		if a := &b.Body.Attributes[i]; a.Name == name {
			if kept := d.commentsIn(a.Value.At); kept != "" {
				return d.add(edit{start: a.NameAt.Start.Byte, end: a.Value.At.End.Byte, with: strings.TrimLeft(kept, "\r\n\t ")})
			}
			start, end := d.wholeLines(a.NameAt.Start.Byte, a.Value.At.End.Byte)
			if start == a.NameAt.Start.Byte { // a comment moves up to where it stood
				end += len(d.file.Text[end:]) - len(bytes.TrimLeft(d.file.Text[end:], " \t"))
			}
			return d.add(edit{start: start, end: end})
		}
	}
	return nil
}

// Replace puts a text in place of a range. Comments inside the range stay behind
// it. A label may be replaced for [Document.Splice] alone: for [Document.Text] all
// that the block holds would be something else then.
func (d *Document) Replace(at source.Range, with string) error {
	return d.add(edit{start: at.Start.Byte, end: at.End.Byte, with: with + d.commentsIn(at)})
}

// commentsIn gives the comments of a range, each on a new line.
func (d *Document) commentsIn(at source.Range) string {
	kept := ""
	for _, c := range d.comments {
		if at.Start.Byte < c.Start && c.End <= at.End.Byte {
			between := " " // of a value on one line it is one that ends, /* */
			if at.Start.Line != at.End.Line {
				between = d.newline() + d.margin(at.Start.Byte)
			}
			kept += between + c.Text
		}
	}
	return kept
}

// Insert adds lines to a block, behind its last attribute, or at its beginning
// where it has none; those of a second call stand behind those of the first. A
// block on one line is opened up.
func (d *Document) Insert(b *hcltext.Block, lines string) error {
	a, err := d.addition(b)
	if err != nil {
		return err
	}
	a.lines = append(a.lines, lines)
	d.edits[a.edit].with = a.text(d.newline())
	return nil
}

// InsertAfter adds a block, or several, behind another one, with a blank line
// between.
func (d *Document) InsertAfter(b *hcltext.Block, text string) error {
	if b == nil {
		return errors.New("adding a block: no block to put it behind")
	}
	newline := d.newline()
	at := d.behindComment(b.Whole.End.Byte)
	with := newline + newline + indent(text, d.margin(b.Header.Start.Byte), newline)
	return d.add(edit{start: at, end: at, with: with})
}

// Silence turns a block into a comment, with a line of comment above that says
// why. Nothing of it is lost, and nothing of it counts any more.
func (d *Document) Silence(b *hcltext.Block, why string) error {
	if b == nil {
		return errors.New("turning a block into a comment: no such block")
	}
	start, end := b.Whole.Start.Byte, b.Whole.End.Byte
	line := bytes.LastIndexByte(d.file.Text[:start], '\n') + 1
	rest := bytes.IndexByte(d.file.Text[end:], '\n')
	if rest < 0 {
		rest = len(d.file.Text) - end
	}
	tail := strings.TrimSpace(string(d.file.Text[end : end+rest]))
	if len(bytes.TrimSpace(d.file.Text[line:start])) > 0 || tail != "" && !strings.HasPrefix(tail, "#") && !strings.HasPrefix(tail, "//") {
		return errors.New("turning a block into a comment: something else stands on its lines")
	}
	end += len(strings.TrimRight(string(d.file.Text[end:end+rest]), " \t\r")) // its own comment goes along
	newline, margin := d.newline(), string(d.file.Text[line:start])
	var out []string
	for _, text := range strings.Split(string(d.file.Text[start:end]), "\n") {
		text = strings.TrimPrefix(strings.TrimRight(text, "\r"), margin)
		out = append(out, strings.TrimRight("# "+text, " "))
	}
	with := "# " + why + newline + margin + strings.Join(out, newline+margin)
	return d.add(edit{start: start, end: end, with: with, silent: true})
}

// Copy gives the text of a block as if it stood alone: without the blanks before
// its lines, and without comments, which are about the block that they stand in.
func (d *Document) Copy(b *hcltext.Block) string {
	start, end := b.Whole.Start.Byte, b.Whole.End.Byte
	var kept []byte
	at := start
	for _, c := range d.comments {
		if start <= c.Start && c.End <= end {
			kept = append(kept, d.file.Text[at:c.Start]...)
			at = c.End
		}
	}
	kept = append(kept, d.file.Text[at:end]...)
	margin := d.margin(start)
	var lines []string
	for line := range strings.Lines(string(kept)) {
		line = strings.TrimPrefix(strings.TrimRight(line, " \t\r\n"), margin)
		if line != "" || len(lines) > 0 && lines[len(lines)-1] != "" {
			lines = append(lines, line)
		}
	}
	return strings.Join(lines, "\n")
}

// add keeps an edit; two that overlap contradict each other.
func (d *Document) add(e edit) error {
	for _, other := range d.edits {
		if e.start < other.end && other.start < e.end {
			return d.meet(e.start)
		}
	}
	d.edits = append(d.edits, e)
	return nil
}

func (d *Document) meet(at int) error {
	return fmt.Errorf("changing %s: two changes meet at line %d", d.file.Name, d.file.Position(at).Line)
}

// newline is how the text ends its lines.
func (d *Document) newline() string {
	if i := bytes.IndexByte(d.file.Text, '\n'); i > 0 && d.file.Text[i-1] == '\r' {
		return "\r\n"
	}
	return "\n"
}

// margin gives the blanks before what begins at a byte.
func (d *Document) margin(start int) string {
	line := bytes.LastIndexByte(d.file.Text[:start], '\n') + 1
	before := string(d.file.Text[line:start])
	return before[:len(before)-len(strings.TrimLeft(before, " \t"))]
}

// behindComment steps over a comment that ends the line, so that it stays with
// what it is about.
func (d *Document) behindComment(at int) int {
	end := bytes.IndexByte(d.file.Text[at:], '\n')
	if end < 0 {
		end = len(d.file.Text) - at
	}
	rest := strings.TrimRight(string(d.file.Text[at:at+end]), "\r")
	words := strings.TrimLeft(rest, " \t")
	if strings.HasPrefix(words, "#") || strings.HasPrefix(words, "//") {
		return at + len(rest)
	}
	return at
}

// wholeLines widens a stretch to its lines where nothing else stands there.
func (d *Document) wholeLines(start, end int) (int, int) {
	line := bytes.LastIndexByte(d.file.Text[:start], '\n') + 1
	rest := bytes.IndexByte(d.file.Text[end:], '\n')
	if rest < 0 || len(bytes.TrimSpace(d.file.Text[line:start])) > 0 || len(bytes.TrimSpace(d.file.Text[end:end+rest])) > 0 {
		return start, end
	}
	return line, end + rest + 1
}

func indent(text, margin, newline string) string {
	lines := strings.Split(strings.ReplaceAll(text, "\r\n", "\n"), "\n")
	for i, line := range lines {
		if line != "" {
			lines[i] = margin + line
		}
	}
	return strings.Join(lines, newline)
}

// Splice applies the edits without looking at the result: quick, for texts that
// are read at once and thrown away.
func (d *Document) Splice() []byte {
	edits := slices.Clone(d.edits)
	slices.SortStableFunc(edits, func(a, b edit) int {
		return cmp.Or(cmp.Compare(a.start, b.start), cmp.Compare(a.end, b.end))
	})
	out := make([]byte, 0, len(d.file.Text)+1024)
	at := 0
	for _, e := range edits {
		out = append(append(out, d.file.Text[at:e.start]...), e.with...)
		at = e.end
	}
	return append(out, d.file.Text[at:]...)
}

// Text applies the edits, lays the result out where the text was laid out before,
// and holds it against what was meant.
func (d *Document) Text() ([]byte, error) {
	spliced := d.Splice()
	refuse := func(format string, args ...any) ([]byte, error) {
		return nil, fmt.Errorf("changing %s: "+format, append([]any{d.file.Name}, args...)...)
	}
	after, problems, _ := hcltext.Parse(source.NewFile(d.file.Name, spliced))
	if len(problems) > 0 {
		return refuse("the changed text cannot be read: %w", problems)
	}
	if why := d.differs(spliced, after); why != "" {
		return refuse("%s", why)
	}
	if !bytes.Equal(hcltext.Format(d.file.Text), d.file.Text) {
		return spliced, nil // not laid out before: the other lines are not ours to move
	}
	laid := hcltext.Format(spliced)
	again, problems, _ := hcltext.Parse(source.NewFile(d.file.Name, laid))
	if len(problems) > 0 || !slices.Equal(flatten(after, nil), flatten(again, nil)) || !slices.Equal(words(spliced), words(laid)) {
		return spliced, nil // the formatter did more than move blanks
	}
	return laid, nil
}
