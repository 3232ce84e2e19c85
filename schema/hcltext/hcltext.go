// Package hcltext turns a text in HCL's native syntax into plain data: blocks,
// attributes and literal values, each with its place. It is the only door to
// the HCL parser; no type of that library leaves this package.
//
// HCL is used as data: a value is a string, a number, true or false, a list or
// an object of these. Whatever else the syntax offers (references, calls,
// operators, templates, for) is a problem at its place.
//
// Use [Parse]. It runs [source.Guard] first, so no text reaches the parser
// that could exhaust it, and it never panics.
package hcltext

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"stringline/schema/source"
)

// Body is what stands between two braces, or a whole file. Attributes and
// Blocks are in the order of the text.
type Body struct {
	Attributes []Attribute
	Blocks     []Block
}

// Attribute is one "name = value".
type Attribute struct {
	Name   string
	NameAt source.Range
	Value  Literal
}

// Block is one block with its labels.
type Block struct {
	Keyword   string
	KeywordAt source.Range
	Labels    []Label
	Body      Body
	Header    source.Range // keyword and labels
	Open      source.Range // the opening brace
	Whole     source.Range // to the closing brace
}

// Label is one label of a block.
type Label struct {
	Text string
	At   source.Range
}

// Kind says what a literal is.
type Kind uint8

// The kinds. Bad is a value that is not a literal: its problem is among those
// that [Parse] returned.
const (
	Bad Kind = iota
	String
	Number
	Bool
	List
	Object
)

// String names the kind as messages do.
func (k Kind) String() string {
	return [...]string{"no literal value", "a string", "a number", "true or false", "a list", "an object"}[k]
}

// Literal is a value as written.
type Literal struct {
	Kind  Kind
	Text  string // String: without quotes and escapes; Number: digits as written, "-" before them
	Yes   bool   // Bool
	Items []Literal
	Pairs []Pair
	At    source.Range
}

// Found says in a few words what stands there, for messages.
func (l Literal) Found() string {
	switch l.Kind {
	case String:
		return fmt.Sprintf("the text %q", Shorten(l.Text))
	case Number:
		return "the bare number " + Shorten(l.Text)
	case Bool:
		return fmt.Sprint(l.Yes)
	}
	return l.Kind.String()
}

// Pair is one "key = value" of an object.
type Pair struct {
	Key   string
	KeyAt source.Range
	Value Literal
}

// Parse guards, parses and converts a text. The body holds everything that
// could still be read; it is never nil. Problems come in the order of the
// text. broken tells that the syntax itself had errors: whole blocks may be
// missing from the body, so the absence of something proves nothing.
func Parse(f *source.File) (body *Body, problems source.Problems, broken bool) {
	if problems = source.Guard(f); len(problems) > 0 {
		return &Body{}, problems, true
	}
	c := &converter{file: f}
	root := c.parse()
	if root == nil {
		return &Body{}, c.problems, true
	}
	b := c.body(root)
	c.problems.Sort()
	return &b, c.problems, c.broken
}

type converter struct {
	file     *source.File
	problems source.Problems
	broken   bool
	faults   []int // byte offsets of syntax errors, ascending
}

// parse runs HCL's parser. Should it panic on a text that the guard let pass,
// that is a problem of the file, not the end of the program.
func (c *converter) parse() (body *hclsyntax.Body) {
	defer func() {
		if r := recover(); r != nil {
			body = nil
			c.add("syntax", c.file.Range(0, 0), "reading the file: its structure cannot be followed", "", "")
		}
	}()
	file, diagnostics := hclsyntax.ParseConfig(c.file.Text, c.file.Name, hcl.InitialPos)
	for _, d := range diagnostics {
		c.diagnostic(d)
	}
	slices.Sort(c.faults)
	body, _ = file.Body.(*hclsyntax.Body)
	return body
}

func (c *converter) diagnostic(d *hcl.Diagnostic) {
	var at source.Range
	if d.Subject != nil {
		at = c.at(*d.Subject)
		c.faults = append(c.faults, at.Start.Byte)
	} else {
		at = c.file.Range(0, 0)
	}
	if d.Summary == "Attribute redefined" {
		name := c.text(*d.Subject)
		c.add("duplicate", at, fmt.Sprintf("%s is given twice in one block", name), "one value", "a second one")
		return
	}
	c.broken = true
	c.add("syntax", at, "syntax: "+plain(d.Summary, d.Detail), "", "")
}

// plain turns the parser's summary and first sentence into one short line.
func plain(summary, detail string) string {
	if i := strings.Index(detail, ". "); i > 0 {
		detail = detail[:i]
	}
	detail = strings.TrimSuffix(strings.Join(strings.Fields(detail), " "), ".")
	summary = strings.ToLower(summary)
	if detail == "" || strings.EqualFold(detail, summary) {
		return summary
	}
	return summary + ": " + strings.ToLower(detail[:1]) + detail[1:]
}

func (c *converter) add(kind string, at source.Range, message, expected, found string) {
	c.problems = append(c.problems, source.Problem{Kind: kind, Message: message, Expected: expected, Found: found, At: at})
}

func (c *converter) at(r hcl.Range) source.Range { return c.file.Range(r.Start.Byte, r.End.Byte) }

// text gives the bytes as they stand in the file: HCL's own strings are
// normalized to NFC, which would let two spellings of one name meet.
func (c *converter) text(r hcl.Range) string {
	start := min(max(r.Start.Byte, 0), len(c.file.Text))
	end := min(max(r.End.Byte, start), len(c.file.Text))
	return string(c.file.Text[start:end])
}

// faulty tells whether the parser complained inside the range.
func (c *converter) faulty(r hcl.Range) bool {
	i, _ := slices.BinarySearch(c.faults, r.Start.Byte)
	return i < len(c.faults) && c.faults[i] <= r.End.Byte
}

func (c *converter) body(from *hclsyntax.Body) Body {
	var b Body
	for _, a := range from.Attributes {
		b.Attributes = append(b.Attributes, Attribute{
			Name:   c.text(a.NameRange),
			NameAt: c.at(a.NameRange),
			Value:  c.value(a.Expr),
		})
	}
	slices.SortFunc(b.Attributes, func(x, y Attribute) int {
		return cmp.Compare(x.NameAt.Start.Byte, y.NameAt.Start.Byte)
	})
	for _, h := range from.Blocks {
		b.Blocks = append(b.Blocks, c.block(h))
	}
	return b
}

func (c *converter) block(from *hclsyntax.Block) Block {
	header := from.TypeRange
	b := Block{Keyword: c.text(from.TypeRange), KeywordAt: c.at(from.TypeRange)}
	for _, r := range from.LabelRanges {
		raw := c.text(r)
		label := Label{Text: raw, At: c.at(r)}
		if strings.HasPrefix(raw, `"`) && !c.faulty(r) {
			label.Text = c.unquote(raw, r.Start.Byte)
		}
		b.Labels = append(b.Labels, label)
		header.End = r.End
	}
	whole := header
	if from.CloseBraceRange.End.Byte > whole.End.Byte {
		whole.End = from.CloseBraceRange.End
	}
	b.Header, b.Open, b.Whole = c.at(header), c.at(from.OpenBraceRange), c.at(whole)
	if from.Body != nil {
		b.Body = c.body(from.Body)
	}
	return b
}

// Shorten cuts a long text for a message.
func Shorten(s string) string {
	const most = 60
	count := 0
	for i := range s {
		if count == most {
			return s[:i] + "…"
		}
		count++
	}
	return s
}
