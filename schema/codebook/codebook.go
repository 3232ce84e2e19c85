// Package codebook reads codebook.hcl: what a codebook says about itself. Its
// name and version, the code that it follows, its sources, its parameters, and
// the attributes of its own that designs answer in "declared" blocks. The
// rules are not read here.
//
// Use [Load], [Codebook.Set] for a value that a workshop sets, and
// [Codebook.Declares] for what a design may answer.
package codebook

import (
	"fmt"
	"io/fs"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// FileName is the name of the file.
const FileName = "codebook.hcl"

// Codebook is one codebook.hcl as read.
type Codebook struct {
	File                  string // as shown to people
	Name, Version         string // both are owed
	Edition, Jurisdiction string // of the code that it follows; may be empty
	Needs                 string // least version of this program; may be empty
	NeedsAt               source.Range
	Covers, CannotJudge   []string
	Sources               []Source
	Parameters            []Parameter
	Attributes            []Attribute
	Text                  *source.File
	Problems              source.Problems // sorted, at most [source.MaxProblems]
}

// Source is a text that rules cite.
type Source struct {
	Key, Title string
	Status     string // read, transcribed, from memory
	At         source.Range
}

// Statuses are the ways in which a source may have come in.
var statuses = []string{"read", "transcribed", "from memory"}

// Attribute is one that the codebook asks designs for.
type Attribute struct {
	design.Attribute
	Of    string   // the collection of its subjects, such as "banks"
	Kinds []string // the kinds of block that answer it
	At    source.Range
}

// collections are those that have a block in which a design can answer, with
// the kinds of that block.
var collections = []struct {
	name  string
	kinds []string
}{
	{"site", []string{"site"}}, {"grounding", []string{"grounding"}}, {"system", []string{"design"}},
	{"panels", []string{"panel"}}, {"controllers", []string{"controller"}}, {"batteries", []string{"battery"}},
	{"inverters", []string{"inverter"}}, {"converters", []string{"converter"}},
	{"strings", []string{"string"}}, {"arrays", []string{"array"}}, {"chargers", []string{"charger"}}, {"banks", []string{"bank"}},
	{"cable_runs", []string{"cable_run"}}, {"protections", []string{"fuse", "breaker"}}, {"disconnects", []string{"disconnect"}},
	{"ac_outputs", []string{"ac_output"}}, {"loads", []string{"load"}}, {"supplies", []string{"supply"}},
	{"charge_sources", []string{"charge_source"}}, {"readings", []string{"reading"}},
}

var (
	namePattern    = regexp.MustCompile(`^[a-z][a-z0-9_]{0,63}$`)
	versionPattern = regexp.MustCompile(`^[0-9]{1,6}(\.[0-9]{1,6}){0,2}(-[0-9a-z.-]{1,40})?$`)
)

var (
	rootKind = &design.Kind{Name: "codebook", Blocks: []string{"source", "parameter", "attribute"}, Attributes: []design.Attribute{
		{Name: "name", Form: design.Word, Required: true, Means: "the codebook's name, the same as its folder's"},
		{Name: "version", Form: design.Word, Required: true, Means: "the codebook's own version"},
		{Name: "edition", Form: design.Text, Means: "edition of the code that it follows"},
		{Name: "jurisdiction", Form: design.Text, Means: "where that code is in force"},
		{Name: "needs", Form: design.Word, Means: "least version of this program"},
		{Name: "covers", Form: design.TextList, Means: "clauses that it judges"},
		{Name: "cannot_judge", Form: design.TextList, Means: "clauses that it cannot judge"},
	}}
	sourceKind = &design.Kind{Name: "source", Labeled: true, Attributes: []design.Attribute{
		{Name: "title", Form: design.Text, Required: true, Means: "title and edition of the source"},
		{Name: "status", Form: design.Word, Words: statuses, Required: true, Means: "read, transcribed or from memory"},
	}}
	kinds         = []string{"quantity", "word", "yes_no"}
	parameterKind = &design.Kind{Name: "parameter", Labeled: true, Attributes: []design.Attribute{
		{Name: "kind", Form: design.Word, Words: kinds, Required: true, Means: "quantity, word or yes_no"},
		{Name: "unit", Form: design.Word, Means: "unit of a quantity"},
		{Name: "words", Form: design.TextList, Means: "the words that it may be"},
		{Name: "means", Form: design.Text, Required: true, Means: "one line for people"},
		{Name: "default", Form: design.Text, Means: "value where the workshop sets none"},
		{Name: "range", Form: design.TextList, Means: "least and largest value"},
	}}
	attributeKind = &design.Kind{Name: "attribute", Labeled: true, Attributes: []design.Attribute{
		{Name: "of", Form: design.Word, Words: collectionNames(), Required: true, Means: "the collection that it is asked of"},
		{Name: "kind", Form: design.Word, Words: kinds, Required: true, Means: "quantity, word or yes_no"},
		{Name: "unit", Form: design.Word, Means: "unit of a quantity"},
		{Name: "words", Form: design.TextList, Means: "the words that it may be"},
		{Name: "means", Form: design.Text, Required: true, Means: "one line for people"},
	}}
)

func collectionNames() []string {
	names := make([]string, len(collections))
	for i, c := range collections {
		names[i] = c.name
	}
	return names
}

// Declares gives what the codebook asks for, by kind of block, in the form
// that [design.Options] takes.
func (c *Codebook) Declares() map[string][]design.Attribute {
	asked := map[string][]design.Attribute{}
	for _, a := range c.Attributes {
		for _, kind := range a.Kinds {
			asked[kind] = append(asked[kind], a.Attribute)
		}
	}
	return asked
}

// Parameter finds a declared parameter by name.
func (c *Codebook) Parameter(name string) (*Parameter, bool) {
	for i := range c.Parameters {
		if c.Parameters[i].Name == name {
			return &c.Parameters[i], true
		}
	}
	return nil, false
}

type loader struct {
	*hcltext.Collector
	broken bool
	book   *Codebook
}

// Load reads a codebook.hcl. It never gives nil: what is wrong is in Problems,
// and everything that could be read is in the codebook. fsys is the tree, name
// the file in it, show tells how a path is shown to people (nil: as it is).
func Load(fsys fs.FS, name string, show func(string) string) *Codebook {
	c := &Codebook{File: name}
	if show != nil {
		c.File = show(name)
	}
	l := &loader{Collector: hcltext.NewCollector(), book: c}
	text, err := design.ReadFile(fsys, name)
	if err != nil {
		l.Add(source.Problem{Kind: "file", Message: fmt.Sprintf("reading the codebook: %v", err), At: source.Range{File: c.File}})
		c.Problems = l.List()
		return c
	}
	c.Text = source.NewFile(c.File, text)
	body, problems, broken := hcltext.Parse(c.Text)
	l.broken = broken
	for _, p := range problems {
		l.Add(p)
	}
	l.root(body)
	l.blocks(body.Blocks)
	c.Problems = l.List()
	return c
}

func (l *loader) problem(kind string, at source.Range, block, message, expected, found, near string) {
	l.Add(source.Problem{Kind: kind, Message: message, Block: block, Expected: expected, Found: found, Near: near, At: at})
}

func (l *loader) root(body *hcltext.Body) {
	c := l.book
	values := design.Fields(rootKind, "", body.Attributes, c.Text.Range(0, 0), l.broken, l.Collector)
	text := func(name string) string {
		if v, ok := values[name]; ok && !v.Bad {
			return v.Text
		}
		return ""
	}
	matching := func(name string, pattern *regexp.Regexp, expected string) string {
		s := text(name)
		if s == "" || pattern.MatchString(s) {
			return s
		}
		found := strconv.Quote(hcltext.Shorten(s))
		l.problem("word", values[name].At, "", fmt.Sprintf("%s: expected %s, found %s", name, expected, found), expected, found, "")
		return ""
	}
	c.Name = matching("name", namePattern, "small letters, digits and _")
	c.Version = matching("version", versionPattern, "a version such as 1.0.0")
	if c.Needs = matching("needs", versionPattern, "a version such as 0.4"); c.Needs != "" {
		c.NeedsAt = values["needs"].At
	}
	c.Edition, c.Jurisdiction = text("edition"), text("jurisdiction")
	if v, ok := values["covers"]; ok {
		c.Covers = v.Texts
	}
	if v, ok := values["cannot_judge"]; ok {
		c.CannotJudge = v.Texts
		for i, clause := range v.Texts {
			if slices.Contains(c.Covers, clause) {
				l.problem("duplicate", v.TextsAt[i], "", fmt.Sprintf("cannot_judge: clause %q is among those that the codebook covers", clause), "one of the two", "both", "")
			}
		}
	}
}

func (l *loader) blocks(blocks []hcltext.Block) {
	first := map[string]source.Range{}
	for i := range blocks {
		b := &blocks[i]
		if !slices.Contains(rootKind.Blocks, b.Keyword) {
			l.problem("unknown_block", b.KeywordAt, "", fmt.Sprintf("unknown block %s in a codebook file", strconv.Quote(hcltext.Shorten(b.Keyword))),
				"one of "+strings.Join(rootKind.Blocks, ", "), b.Keyword, l.Near(b.Keyword, rootKind.Blocks))
			continue
		}
		if len(b.Labels) != 1 {
			l.problem("label", b.Header, "", fmt.Sprintf("a %s block has one label, its name in quotes", b.Keyword), "one label", fmt.Sprintf("%d labels", len(b.Labels)), "")
			continue
		}
		name, usable := b.Labels[0].Text, true
		if !namePattern.MatchString(name) || name == "id" || name == "unit" {
			usable = false
			const expected = "small letters, digits and _, and not \"id\" or \"unit\""
			found := strconv.Quote(hcltext.Shorten(name))
			near := strings.ReplaceAll(strings.ToLower(name), "-", "_")
			if !namePattern.MatchString(near) || near == name {
				near = ""
			}
			l.problem("label", b.Labels[0].At, "", fmt.Sprintf("the name of a %s: expected %s, found %s", b.Keyword, expected, found), expected, found, near)
		}
		for _, inner := range b.Body.Blocks {
			l.problem("unknown_block", inner.KeywordAt, id(b), fmt.Sprintf("a %s block holds no other block", b.Keyword), "an attribute", inner.Keyword, "")
		}
		keep := l.block(b)
		if !usable || keep == nil {
			continue
		}
		for _, key := range keep.keys {
			if at, twice := first[key]; twice {
				l.problem("duplicate", b.Header, id(b), fmt.Sprintf("%s %q is declared twice, first at %s", b.Keyword, name, at), "one", "a second one", "")
				keep = nil
				break
			}
		}
		if keep == nil {
			continue
		}
		for _, key := range keep.keys {
			first[key] = b.Header
		}
		keep.add()
	}
}

func id(b *hcltext.Block) string { return b.Keyword + "." + b.Labels[0].Text }

// kept is a block that could be read: what it must be unique under, and how it
// enters the codebook.
type kept struct {
	keys []string
	add  func()
}

func (l *loader) block(b *hcltext.Block) *kept {
	name, c := b.Labels[0].Text, l.book
	switch b.Keyword {
	case "source":
		values := design.Fields(sourceKind, name, b.Body.Attributes, b.Header, l.broken, l.Collector)
		s := Source{Key: name, At: b.Header}
		if !good(values, "title", "status") {
			return nil
		}
		s.Title, s.Status = values["title"].Text, values["status"].Text
		return &kept{[]string{"source " + name}, func() { c.Sources = append(c.Sources, s) }}
	case "parameter":
		p := l.parameter(b)
		if p == nil {
			return nil
		}
		return &kept{[]string{"parameter " + name}, func() { c.Parameters = append(c.Parameters, *p) }}
	}
	a := l.attribute(b)
	if a == nil {
		return nil
	}
	var keys []string
	for _, kind := range a.Kinds { // one name may be asked of several collections
		keys = append(keys, "attribute "+kind+" "+name)
	}
	return &kept{keys, func() { c.Attributes = append(c.Attributes, *a) }}
}

// good tells whether all of the values are there and could be read.
func good(values map[string]*design.Value, names ...string) bool {
	for _, name := range names {
		if v, ok := values[name]; !ok || v.Bad {
			return false
		}
	}
	return true
}
