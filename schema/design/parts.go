package design

import (
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
	"sync"

	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// PartsGlob names parts files: a path or glob as it is written, the folder of
// the file that names it (inside the tree, "." at its root), and where it
// stands there.
type PartsGlob struct {
	Glob string
	From string
	At   source.Range
}

// partsSuffix is how the name of a parts file ends.
const partsSuffix = ".parts.hcl"

// PartsCache keeps read and decoded parts files, and weather files as they are,
// for the designs of one workshop. The zero value is ready; it is safe for concurrent use. It must
// not outlive a change of the files.
type PartsCache struct {
	mu       sync.Mutex
	entries  map[string]*partsEntry
	weathers map[string]*weatherEntry
}

// weatherEntry is one weather file as read.
type weatherEntry struct {
	once sync.Once
	text []byte
	err  error
}

// weather reads a weather file, once for all designs of a workshop.
func (c *PartsCache) weather(files fs.FS, name string) ([]byte, error) {
	if c == nil {
		return readUpTo(files, name, maxWeatherBytes+1)
	}
	c.mu.Lock()
	if c.weathers == nil {
		c.weathers = map[string]*weatherEntry{}
	}
	e := c.weathers[name]
	if e == nil {
		e = &weatherEntry{}
		c.weathers[name] = e
	}
	c.mu.Unlock()
	e.once.Do(func() { e.text, e.err = readUpTo(files, name, maxWeatherBytes+1) })
	return e.text, e.err
}

// partsEntry is one parts file as read.
type partsEntry struct {
	once     sync.Once
	file     *source.File
	fault    error
	broken   bool
	blocks   []*Block
	problems source.Problems
	refused  map[string]bool
	// asks holds whether a block answers a codebook's questions: which book is
	// in force differs between designs, so such a file is decoded for each.
	asks bool
	body *hcltext.Body
	read source.Problems // those of the syntax alone
}

func (c *PartsCache) entry(name string) *partsEntry {
	if c == nil {
		return &partsEntry{}
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.entries == nil {
		c.entries = map[string]*partsEntry{}
	}
	e := c.entries[name]
	if e == nil {
		e = &partsEntry{}
		c.entries[name] = e
	}
	return e
}

// load reads and decodes the file once.
func (e *partsEntry) load(read func() ([]byte, error), shown string) {
	e.once.Do(func() {
		text, err := read()
		if err != nil {
			e.fault = err
			return
		}
		e.file = source.NewFile(shown, text)
		e.body, e.read, e.broken = hcltext.Parse(e.file)
		e.asks = slices.ContainsFunc(e.body.Blocks, func(b hcltext.Block) bool {
			return slices.ContainsFunc(b.Body.Blocks, func(inner hcltext.Block) bool { return inner.Keyword == "declared" })
		})
		if !e.asks {
			e.blocks, e.problems, e.refused = e.decode(nil)
		}
	})
}

func (e *partsEntry) decode(declares func(string) (map[string][]Attribute, bool)) ([]*Block, source.Problems, map[string]bool) {
	d := &decoder{Collector: hcltext.NewCollector(), declares: declares, broken: e.broken, refused: map[string]bool{}}
	for _, p := range e.read {
		d.Add(p)
	}
	blocks := d.file(e.body, place{parts: true})
	return blocks, d.List(), d.refused
}

// file decodes a whole file's body; attributes have no place there.
func (d *decoder) file(body *hcltext.Body, in place) []*Block {
	for _, a := range body.Attributes {
		p := source.Problem{Kind: "structure", Message: fmt.Sprintf("%s stands in no block", a.Name), Expected: "a block", Found: a.Name, At: a.NameAt}
		if what, refused := notYet(a.Name); refused {
			p.Kind, p.Message = "later", fmt.Sprintf("%s: %s", a.Name, what)
		}
		d.Add(p)
	}
	return d.blocks(body.Blocks, in)
}

// parts reads every parts file that the design or the workshop names, each
// once, and puts their blocks on the shelf.
func (l *loader) parts(globs []PartsGlob) {
	seen := map[string]bool{}
	for _, g := range globs {
		names, err := glob(l.Files, g.From, g.Glob)
		if err != nil {
			l.partsFault(g, g.Glob, err)
			continue
		}
		for _, name := range names {
			if seen[name] {
				continue
			}
			seen[name] = true
			l.partsFile(g, name)
		}
	}
}

func (l *loader) partsFault(g PartsGlob, name string, err error) {
	l.incomplete = true
	l.Add(source.Problem{
		Kind:    "file",
		Message: fmt.Sprintf("reading parts %q: %v", name, err),
		Found:   name,
		At:      g.At,
	})
}

func (l *loader) partsFile(g PartsGlob, name string) {
	shown := l.shown(name)
	if !strings.HasSuffix(path.Base(name), partsSuffix) {
		l.partsFault(g, shown, fmt.Errorf("the name of a parts file ends in %s", partsSuffix))
		return
	}
	read := func() ([]byte, error) { return ReadFile(l.Files, name) }
	e := l.Cache.entry(name + "\x00" + shown)
	if text, tried := l.Texts[shown]; tried {
		e, read = &partsEntry{}, func() ([]byte, error) { return text, nil }
	}
	e.load(read, shown)
	if e.fault != nil {
		l.partsFault(g, shown, e.fault)
		return
	}
	l.design.Files = append(l.design.Files, e.file)
	l.incomplete = l.incomplete || e.broken
	blocks, problems, refused := e.blocks, e.problems, e.refused
	if e.asks {
		blocks, problems, refused = e.decode(l.Declares)
	}
	for _, p := range problems {
		l.Add(p)
	}
	for key := range refused {
		l.refused[key] = true
	}
	for _, b := range blocks {
		l.shelve(b)
	}
}

// shelve puts a part where references find it. The same name a second time is
// a problem at the second place.
func (l *loader) shelve(b *Block) {
	kind := b.Kind.Name
	if l.shelf[kind] == nil {
		l.shelf[kind] = map[string]*Block{}
	}
	if before, twice := l.shelf[kind][b.Name]; twice {
		l.Add(source.Problem{
			Kind:     "duplicate",
			Message:  fmt.Sprintf("%s %q is declared twice, first at %s", kind, b.Name, before.Header),
			Block:    b.ID(),
			Expected: "one",
			Found:    "a second one",
			At:       b.Header,
		})
		return
	}
	l.shelf[kind][b.Name] = b
}
