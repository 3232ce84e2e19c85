package workshop

import (
	"errors"
	"fmt"
	"io/fs"
	"strconv"
	"strings"

	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/source"
)

func (l *loader) book(b *hcltext.Block) {
	book := Book{Name: b.Labels[0].Text, At: b.Header, Parameters: map[string]Parameter{}}
	values := design.Fields(bookKind, book.Name, b.Body.Attributes, b.Header, l.broken, l.Collector)
	good := true
	if v, ok := values["path"]; ok {
		book.Path, good = l.inside(b, v, bookThere)
	}
	if v, ok := values["key"]; ok {
		var fine bool
		book.Key, fine = l.inside(b, v, fileThere)
		good = good && fine
	}
	if v, ok := values["digest"]; ok {
		good = good && !v.Bad
		if !v.Bad && !digestPattern.MatchString(v.Text) {
			good = false
			found := strconv.Quote(hcltext.Shorten(v.Text))
			l.problem("word", v.At, id(b), "digest: expected sha256: and 64 hexadecimal digits, found "+found, "sha256: and 64 hexadecimal digits", found, "")
		}
		book.Digest = v.Text
	}
	if v, ok := values["answers"]; ok { // one that cannot be read allows nothing
		for i, rule := range v.Texts {
			const expected = "the id of a rule, such as limits.conductor_carries"
			if !rulePattern.MatchString(rule) {
				found := strconv.Quote(hcltext.Shorten(rule))
				l.problem("word", v.TextsAt[i], id(b), "answers: expected "+expected+", found "+found, expected, found, "")
				continue
			}
			book.Answers = append(book.Answers, Answer{Rule: rule, At: v.TextsAt[i]})
		}
	}
	seen := false
	for i := range b.Body.Blocks {
		inner := &b.Body.Blocks[i]
		switch {
		case inner.Keyword != "params":
			l.problem("unknown_block", inner.KeywordAt, id(b), fmt.Sprintf("unknown block %s in a codebook block", strconv.Quote(hcltext.Shorten(inner.Keyword))),
				"params", inner.Keyword, l.Near(inner.Keyword, []string{"params"}))
		case seen:
			l.problem("duplicate", inner.Header, id(b), "a second params block in one codebook block", "one", "a second one", "")
		default:
			seen = true
			l.parameters(b, inner, &book)
		}
	}
	// A book whose place, pin or signer could not be read must not run as if
	// it had none: it is left out, and the problem stands.
	if good {
		l.workshop.Books = append(l.workshop.Books, book)
	}
}

func (l *loader) parameters(b, params *hcltext.Block, book *Book) {
	for _, label := range params.Labels {
		l.problem("label", label.At, id(b), "a params block has no label", "no label", strconv.Quote(hcltext.Shorten(label.Text)), "")
	}
	for _, inner := range params.Body.Blocks {
		l.problem("unknown_block", inner.KeywordAt, id(b), "a params block holds no other block", "an attribute", inner.Keyword, "")
	}
	for _, a := range params.Body.Attributes {
		p := Parameter{Name: a.Name, Literal: a.Value, At: a.Value.At, NameAt: a.NameAt}
		switch a.Value.Kind {
		case hcltext.String, hcltext.Number:
			p.Text = a.Value.Text
		case hcltext.Bool:
			p.Text = strconv.FormatBool(a.Value.Yes)
		case hcltext.Bad: // reported by the parser; the book's own default must not pass for it
		default:
			const expected = "a quantity or a word in quotes, a number, true or false"
			l.problem("value", a.Value.At, id(b), fmt.Sprintf("%s: expected %s, found %s", a.Name, expected, a.Value.Found()), expected, a.Value.Found(), "")
			p.Literal.Kind = hcltext.Bad
		}
		book.Parameters[a.Name] = p
	}
}

// inside resolves a path that the workshop file names and looks whether it is
// there.
func (l *loader) inside(b *hcltext.Block, v *design.Value, there func(fs.FS, string) error) (string, bool) {
	if v.Bad {
		return "", false
	}
	name, err := design.Resolve(l.workshop.Folder, v.Text)
	if err == nil {
		err = there(l.files, name)
	}
	if err != nil {
		l.Add(source.Problem{Kind: "file", Message: fmt.Sprintf("%s: reading %q: %v", v.Attribute.Name, v.Text, err), Block: id(b), Found: v.Text, At: v.At})
		return "", false
	}
	return name, true
}

// ArchiveSuffix ends the name of a codebook's archive.
const ArchiveSuffix = ".zip"

func bookThere(files fs.FS, name string) error {
	info, err := fs.Stat(files, name)
	if err != nil {
		return design.PlainFault(err)
	}
	if !info.IsDir() && !(info.Mode().IsRegular() && strings.HasSuffix(name, ArchiveSuffix)) {
		return errors.New("it is neither a folder nor an archive named *" + ArchiveSuffix)
	}
	return nil
}

func fileThere(files fs.FS, name string) error {
	_, err := design.ReadFile(files, name)
	return err
}
