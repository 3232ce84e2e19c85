package rewrite

import (
	"slices"
	"strings"

	"stringline/schema/hcltext"
)

// piece is one header or value of a text, with the bytes that it stands at.
type piece struct {
	path, value string
	start, end  int
}

// pieces lists what a body says, in its order: a block's path is that of the
// blocks around it with the labels.
func pieces(b *hcltext.Body, path string, to []piece) []piece {
	type item struct {
		at int
		do func()
	}
	var items []item
	for i := range b.Attributes {
		a := &b.Attributes[i]
		items = append(items, item{a.NameAt.Start.Byte, func() {
			to = append(to, piece{path + "/" + a.Name, written(a.Value), a.NameAt.Start.Byte, a.Value.At.End.Byte})
		}})
	}
	for i := range b.Blocks {
		x := &b.Blocks[i]
		items = append(items, item{x.Header.Start.Byte, func() {
			own := path + "/" + x.Keyword
			for _, l := range x.Labels {
				own += " " + l.Text
			}
			to = append(to, piece{own, "{", x.Header.Start.Byte, x.Open.End.Byte})
			to = pieces(&x.Body, own, to)
		}})
	}
	slices.SortStableFunc(items, func(x, y item) int { return x.at - y.at })
	for _, x := range items {
		x.do()
	}
	return to
}

// flatten gives the pieces as texts, without those that skip takes.
func flatten(b *hcltext.Body, skip func(piece) bool) []string {
	var list []string
	for _, p := range pieces(b, "", nil) {
		if skip == nil || !skip(p) {
			list = append(list, p.path+" = "+p.value)
		}
	}
	return list
}

// written gives a literal in one spelling.
func written(l hcltext.Literal) string {
	switch l.Kind {
	case hcltext.Bool:
		if l.Yes {
			return "true"
		}
		return "false"
	case hcltext.List:
		items := make([]string, len(l.Items))
		for i, x := range l.Items {
			items[i] = written(x)
		}
		return "[" + strings.Join(items, "\x00") + "]"
	case hcltext.Object:
		items := make([]string, len(l.Pairs))
		for i, p := range l.Pairs {
			items[i] = p.Key + "\x01" + written(p.Value)
		}
		return "{" + strings.Join(items, "\x00") + "}"
	}
	return l.Kind.String() + " " + l.Text
}

// words gives the comments of a text.
func words(text []byte) []string {
	var list []string
	for _, c := range hcltext.Comments(text) {
		list = append(list, c.Text)
	}
	return list
}

// differs says what of the text changed that no edit touches, or "". What the
// edits leave alone must come in the same order in the result; what they put in
// may stand between.
func (d *Document) differs(spliced []byte, after *hcltext.Body) string {
	touched := func(start, end int) bool {
		return slices.ContainsFunc(d.edits, func(e edit) bool { return e.start < end && start < e.end })
	}
	before := flatten(d.body, func(p piece) bool { return touched(p.start, p.end) })
	if lost := missing(before, flatten(after, nil)); lost != "" {
		return "more would change than was asked: " + strings.Join(strings.Fields(lost), " ")
	}
	var comments []string
	for _, c := range d.comments {
		silent := slices.ContainsFunc(d.edits, func(e edit) bool { return e.silent && e.start <= c.Start && c.End <= e.end })
		if !silent { // a silenced block's own comments stand in it as they were, behind another mark
			comments = append(comments, c.Text)
		}
	}
	if lost := missing(comments, words(spliced)); lost != "" {
		return "a comment would be lost: " + lost
	}
	return ""
}

// missing gives the first item of a list that another does not have in the same
// order, or "".
func missing(list, in []string) string {
	at := 0
	for _, item := range list {
		for at < len(in) && in[at] != item {
			at++
		}
		if at == len(in) {
			return item
		}
		at++
	}
	return ""
}
