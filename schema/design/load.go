package design

import (
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"fmt"
	"io/fs"
	"path"

	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// Options says what to load.
type Options struct {
	// Files is the confined tree that holds the design and its parts: the
	// folder of the workshop, best as the fs.FS of an os.Root.
	Files fs.FS
	// Path is the design inside Files, with "/" between folders.
	Path string
	// Show tells how a path inside Files is shown to people; nil: as it is.
	Show func(path string) string
	// Text, if not nil, is the design's text; Files still serves the rest.
	Text []byte
	// Texts stand in place of files' own, by the name as shown: of parts files
	// whose text is being tried out. What the Cache has of those is left alone.
	Texts map[string][]byte
	// Parts are the workshop's parts files.
	Parts []PartsGlob
	// Declares gives the attributes that a codebook in force asks for, by kind
	// of block; false where no such book is in force.
	Declares func(book string) (map[string][]Attribute, bool)
	// Cache, if not nil, shares parts files between the designs of a workshop.
	Cache *PartsCache
}

type loader struct {
	Options
	*decoder
	design *Design
	// shelf holds every part that the files declare, by kind and name.
	shelf map[string]map[string]*Block
	// index finds top-level blocks by kind and name.
	index map[string]*Block
	// names lists the names of a kind, once they are asked for.
	names map[string][]string
	// measurable lists the ids that readings may be of, once they are asked for.
	measurable map[string]bool
	// incomplete says that some file could not be read whole, so a name that is
	// not found may stand there.
	incomplete bool
}

// Load reads one design with the parts files that it and its workshop name. It
// never gives nil and never panics: what is wrong is in Problems, sorted, at
// most [source.MaxProblems] a file, and everything that could be read is in
// the design. A value that was written but could not be read is Bad; so is a
// reference that names nothing.
func Load(opts Options) *Design {
	l := &loader{
		Options: opts,
		design:  &Design{Parts: map[string]map[string]*Block{}},
		shelf:   map[string]map[string]*Block{},
		index:   map[string]*Block{},
		names:   map[string][]string{},
		decoder: &decoder{Collector: hcltext.NewCollector(), declares: opts.Declares, refused: map[string]bool{}},
	}
	d := l.design
	d.Shelf = l.shelf
	d.File = l.shown(opts.Path)
	text := opts.Text
	if text == nil {
		var err error
		if text, err = ReadFile(opts.Files, opts.Path); err != nil {
			l.Add(source.Problem{Kind: "file", Message: fmt.Sprintf("reading the design: %v", err), At: source.Range{File: d.File}})
			d.Problems = l.List()
			d.Digest = digest(nil, nil)
			return d
		}
	}
	file := source.NewFile(d.File, text)
	d.Files = []*source.File{file}
	l.read(file)
	d.Digest = digest(d.Files, d.Weather)
	l.Each(func(p *source.Problem) { fillBlock(p, d, l.shelf) })
	d.Problems = l.List()
	return d
}

func (l *loader) shown(name string) string {
	if l.Show == nil {
		return name
	}
	return l.Show(name)
}

func (l *loader) read(file *source.File) {
	body, problems, broken := hcltext.Parse(file)
	for _, p := range problems {
		l.Add(p)
	}
	l.broken, l.incomplete = broken, broken
	blocks := l.file(body, place{})
	if l.tooMany(blocks, map[string]int{}) {
		return // judging a design may take time that grows with the square of its parts
	}
	l.sort(blocks)
	l.head(file)
	l.parts(append(l.globs(), l.Parts...))
	l.resolve()
	l.check()
	l.waivers()
}

// mostBlocks bounds how many blocks of one kind a design may hold, wherever they
// stand. A village of cabins has fewer.
const mostBlocks = 500

// tooMany reports the first block beyond the bound.
func (l *loader) tooMany(blocks []*Block, count map[string]int) bool {
	for _, b := range blocks {
		kind := b.Kind.Name
		if count[kind]++; count[kind] > mostBlocks {
			l.say(b.Parent, source.Problem{Kind: "size", Message: fmt.Sprintf("the design has more than %d %s blocks; none of it is judged", mostBlocks, kind),
				Expected: fmt.Sprintf("at most %d %s blocks", mostBlocks, kind), Found: "more", At: b.Header})
			return true
		}
		if l.tooMany(b.Blocks, count) {
			return true
		}
	}
	return false
}

// sort parts the top-level blocks into head, system blocks and parts.
func (l *loader) sort(blocks []*Block) {
	for _, b := range blocks {
		switch {
		case b.Kind.Name == "design":
			l.design.Head = b
		case b.Kind.Part:
			l.shelve(b)
			l.take(b)
		default:
			l.design.Blocks = append(l.design.Blocks, b)
			l.index[b.Kind.Name+" "+b.Name] = b
		}
	}
}

// take notes that the design declares or uses a part.
func (l *loader) take(part *Block) {
	kind := part.Kind.Name
	if l.design.Parts[kind] == nil {
		l.design.Parts[kind] = map[string]*Block{}
	}
	l.design.Parts[kind][part.Name] = part
}

func (l *loader) head(file *source.File) {
	d := l.design
	if d.Head == nil {
		if !l.broken && !l.refusedKind("design") {
			l.Add(source.Problem{Kind: "missing", Message: `no design block: a design begins with design "TITLE" { … }`,
				Expected: "a design block", Found: "none", At: file.Range(0, 0)})
		}
		return
	}
	d.Name = d.Head.Name
	if v, ok := d.Head.Value("revision"); ok {
		d.Revision = v.Text
	}
	if v, ok := d.Head.Value("codebooks"); ok {
		for i, name := range v.Texts {
			if !ValidLabel(name) {
				v.Bad = true
				l.say(d.Head, source.Problem{Kind: "label", Message: fmt.Sprintf("codebooks: %q is no name of a codebook: expected small letters, digits, - and _", hcltext.Shorten(name)),
					Expected: "the name of a codebook", Found: name, At: v.TextsAt[i]})
				continue
			}
			d.Codebooks = append(d.Codebooks, name)
		}
	}
}

func (l *loader) refusedKind(kind string) bool {
	for key := range l.refused {
		if len(key) > len(kind) && key[:len(kind)+1] == kind+" " {
			return true
		}
	}
	return false
}

// globs are the design's own parts, relative to its folder.
func (l *loader) globs() []PartsGlob {
	if l.design.Head == nil {
		return nil
	}
	v, ok := l.design.Head.Value("parts")
	if !ok {
		return nil
	}
	var globs []PartsGlob
	for i, g := range v.Texts {
		globs = append(globs, PartsGlob{Glob: g, From: l.folder(), At: v.TextsAt[i]})
	}
	return globs
}

func (l *loader) folder() string { return path.Dir(l.Path) }

// digest identifies what was read: name, length and bytes of each file, the
// design first, parts files in the order in which they were named, the weather
// last.
func digest(files []*source.File, weather *Weather) string {
	h := sha256.New()
	var size [8]byte
	write := func(b []byte) {
		binary.BigEndian.PutUint64(size[:], uint64(len(b)))
		h.Write(size[:])
		h.Write(b)
	}
	for _, f := range files {
		write([]byte(f.Name))
		write(f.Text)
	}
	if weather != nil {
		write([]byte(weather.File))
		write(weather.Text)
	}
	return "sha256:" + hex.EncodeToString(h.Sum(nil))
}

// fillBlock names the block of a problem that was found before there were
// blocks: one of the syntax.
func fillBlock(p *source.Problem, d *Design, shelf map[string]map[string]*Block) {
	if p.Block != "" || !p.At.Valid() {
		return
	}
	b := innermost(d.Blocks, p.At)
	if b == nil && d.Head != nil {
		b = innermost([]*Block{d.Head}, p.At)
	}
	for _, parts := range shelf {
		for _, part := range parts {
			if b == nil {
				b = innermost([]*Block{part}, p.At)
			}
		}
	}
	if b != nil {
		p.Block = b.ID()
	}
}

// innermost gives the block that holds a place and no inner one that does.
func innermost(list []*Block, at source.Range) *Block {
	for _, b := range list {
		if b.Whole.File == at.File && b.Whole.Start.Byte < at.Start.Byte && at.Start.Byte < b.Whole.End.Byte {
			if inner := innermost(b.Blocks, at); inner != nil {
				return inner
			}
			return b
		}
	}
	return nil
}
