// Package workshop reads workshop.hcl: what a workshop sets once for every
// design below its folder. That is where its parts are, which codebooks it
// uses with which parameters, and which rules it takes more, or less,
// seriously than their book does.
//
// Use [Load]. Whether a codebook exists, and whether a parameter fits its
// declaration, is known where the codebook is.
package workshop

import (
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"strconv"
	"strings"

	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// FileName is the name of the file.
const FileName = "workshop.hcl"

// Workshop is one workshop.hcl as read.
type Workshop struct {
	File   string // as shown to people
	Folder string // the folder of the file inside its tree, "." at the root
	// Parts are the parts files for every design of the workshop, ready for
	// [design.Options].
	Parts    []design.PartsGlob
	Books    []Book  // in the order of the file
	Grades   []Grade // in the order of the file
	Text     *source.File
	Problems source.Problems // sorted, at most [source.MaxProblems]
}

// Book is a codebook that the workshop uses.
type Book struct {
	Name string
	// Path is the book's folder or archive inside the workshop's tree, empty for one that
	// comes with the program.
	Path string
	// Digest pins the book's content ("sha256:…"), Key its signer (a file
	// inside the tree); empty where not wanted.
	Digest, Key string
	Parameters  map[string]Parameter
	Answers     []Answer     // rules of other codebooks that this one may answer
	At          source.Range // keyword and label
}

// Answer names a rule that lacks a figure, and lets the codebook answer it.
type Answer struct {
	Rule string // codebook.rule
	At   source.Range
}

// Parameter is a value that the workshop sets for a codebook. Its literal is
// checked against the book's declaration by codebook.Set.
type Parameter struct {
	Name    string
	Text    string // as written, without quotes
	Literal hcltext.Literal
	At      source.Range // the value
	NameAt  source.Range
}

// Grade changes how seriously a rule is taken.
type Grade struct {
	Rule string // codebook.rule
	As   string // stop, fix, advise
	At   source.Range
}

var (
	rootKind = &design.Kind{Name: "workshop", Attributes: []design.Attribute{
		{Name: "parts", Form: design.TextList, Means: "parts files, paths and globs relative to this file"},
	}}
	bookKind = &design.Kind{Name: "codebook", Labeled: true, Blocks: []string{"params"}, Attributes: []design.Attribute{
		{Name: "path", Form: design.Text, Means: "the codebook's folder or archive, relative to this file"},
		{Name: "digest", Form: design.Word, Means: "the SHA-256 that its content must have"},
		{Name: "key", Form: design.Text, Means: "the public key that its archive must be signed with"},
		{Name: "answers", Form: design.TextList, Means: "rules of other codebooks that this one may answer where they lack a figure"},
	}}
	gradeKind = &design.Kind{Name: "grade", Labeled: true, Attributes: []design.Attribute{
		{Name: "as", Form: design.Word, Words: []string{"stop", "fix", "advise"}, Required: true, Means: "stop, fix or advise"},
	}}
	digestPattern = regexp.MustCompile(`^sha256:[0-9a-f]{64}$`)
	rulePattern   = regexp.MustCompile(`^[a-z][a-z0-9_]*\.[a-z0-9][a-z0-9_-]*$`)
	namePattern   = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)
)

type loader struct {
	*hcltext.Collector
	files    fs.FS
	broken   bool
	workshop *Workshop
}

// Load reads a workshop file. It never gives nil: what is wrong is in
// Problems, and everything that could be read is in the workshop. fsys is the
// confined tree, name the file in it, show tells how a path is shown to people
// (nil: as it is).
func Load(fsys fs.FS, name string, show func(string) string) *Workshop {
	w := &Workshop{File: name, Folder: path.Dir(name)}
	if show != nil {
		w.File = show(name)
	}
	l := &loader{Collector: hcltext.NewCollector(), files: fsys, workshop: w}
	text, err := design.ReadFile(fsys, name)
	if err != nil {
		l.Add(source.Problem{Kind: "file", Message: fmt.Sprintf("reading the workshop: %v", err), At: source.Range{File: w.File}})
		w.Problems = l.List()
		return w
	}
	w.Text = source.NewFile(w.File, text)
	body, problems, broken := hcltext.Parse(w.Text)
	l.broken = broken
	for _, p := range problems {
		l.Add(p)
	}
	l.read(body)
	w.Problems = l.List()
	return w
}

func (l *loader) read(body *hcltext.Body) {
	w := l.workshop
	root := design.Fields(rootKind, "", body.Attributes, w.Text.Range(0, 0), l.broken, l.Collector)
	if v, ok := root["parts"]; ok {
		for i, glob := range v.Texts {
			w.Parts = append(w.Parts, design.PartsGlob{Glob: glob, From: w.Folder, At: v.TextsAt[i]})
		}
	}
	first := map[string]source.Range{}
	for i := range body.Blocks {
		b := &body.Blocks[i]
		switch b.Keyword {
		case "codebook", "grade":
			if !l.label(b) {
				continue
			}
			key := b.Keyword + " " + b.Labels[0].Text
			if at, twice := first[key]; twice {
				l.problem("duplicate", b.Header, id(b), fmt.Sprintf("%s %q stands twice, first at %s", b.Keyword, b.Labels[0].Text, at), "one", "a second one", "")
				continue
			}
			first[key] = b.Header
			if b.Keyword == "codebook" {
				l.book(b)
			} else {
				l.grade(b)
			}
		default:
			known := []string{"codebook", "grade"}
			message := fmt.Sprintf("unknown block %s in a workshop file", strconv.Quote(hcltext.Shorten(b.Keyword)))
			if design.KindOf(b.Keyword) != nil {
				message = fmt.Sprintf("a %s block stands in a design or a parts file, not in a workshop file", b.Keyword)
			}
			l.problem("unknown_block", b.KeywordAt, "", message, "codebook or grade", b.Keyword, l.Near(b.Keyword, known))
		}
	}
}

func id(b *hcltext.Block) string { return b.Keyword + "." + b.Labels[0].Text }

func (l *loader) problem(kind string, at source.Range, block, message, expected, found, near string) {
	l.Add(source.Problem{Kind: kind, Message: message, Block: block, Expected: expected, Found: found, Near: near, At: at})
}

func (l *loader) label(b *hcltext.Block) bool {
	pattern, expected := namePattern, "the name of a codebook: small letters, digits and _"
	if b.Keyword == "grade" {
		pattern, expected = rulePattern, "a rule id, such as codebook.rule"
	}
	if len(b.Labels) != 1 {
		l.problem("label", b.Header, "", fmt.Sprintf("a %s block has one label: %s", b.Keyword, expected), "one label", fmt.Sprintf("%d labels", len(b.Labels)), "")
		return false
	}
	label := b.Labels[0]
	if !pattern.MatchString(label.Text) || len(label.Text) > 128 {
		near := ""
		if lower := strings.ToLower(label.Text); lower != label.Text && pattern.MatchString(lower) {
			near = lower
		}
		found := strconv.Quote(hcltext.Shorten(label.Text))
		l.problem("label", label.At, "", fmt.Sprintf("the label of a %s: expected %s, found %s", b.Keyword, expected, found), expected, found, near)
		return false
	}
	return true
}

func (l *loader) grade(b *hcltext.Block) {
	l.noBlocks(b)
	values := design.Fields(gradeKind, b.Labels[0].Text, b.Body.Attributes, b.Header, l.broken, l.Collector)
	if v, ok := values["as"]; ok && !v.Bad {
		l.workshop.Grades = append(l.workshop.Grades, Grade{Rule: b.Labels[0].Text, As: v.Text, At: b.Header})
	}
}

func (l *loader) noBlocks(b *hcltext.Block) {
	for _, inner := range b.Body.Blocks {
		l.problem("unknown_block", inner.KeywordAt, id(b), fmt.Sprintf("a %s block holds no other block", b.Keyword), "an attribute", inner.Keyword, "")
	}
}
