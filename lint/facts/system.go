package facts

import (
	"strings"

	"stringline/schema/design"
	"stringline/schema/source"
)

// System holds one design's subjects and the facts derived so far. One goroutine
// at a time may use it.
type System struct {
	design   *design.Design
	subjects map[string][]*Subject // by collection, in file order
	byID     map[string]*Subject
}

// Subject is what facts are about: a string, a charger, a run.
type Subject struct {
	id         string
	collection *Collection
	block      *design.Block
	links      map[string][]*Subject
	works      []*Work          // by the entry's place; nil until derived
	answers    map[string]*Work // to codebooks' questions, by "BOOK.NAME"
	typed      subject          // what formulas see: *String, *Charger
}

// ID is the subject's id: "string.south.a".
func (s *Subject) ID() string { return s.id }

// Collection is the declaration of its kind.
func (s *Subject) Collection() *Collection { return s.collection }

// Block is the block that it stands for, of the system the design block; nil for
// a controller input, and for a site or grounding that the design leaves out.
func (s *Subject) Block() *design.Block { return s.block }

// Linked gives the subjects that a link leads to. A link that is no list gives
// exactly one; a name that is no link gives none.
func (s *Subject) Linked(link string) []*Subject { return s.links[link] }

// Declared gives the answers of its block to a codebook's own questions: fact
// ids by attribute.
func (s *Subject) Declared(book string) map[string]string {
	if s.block == nil || len(s.block.Declared[book]) == 0 {
		return nil
	}
	ids := make(map[string]string, len(s.block.Declared[book]))
	for name := range s.block.Declared[book] {
		ids[name] = s.declaredID(book, name)
	}
	return ids
}

func (s *Subject) declaredID(book, name string) string {
	return s.id + ".declared." + book + "." + name
}

func (s *Subject) self() *Subject { return s }

// Design gives the design that the system was made of.
func (s *System) Design() *design.Design { return s.design }

// WithheldYear is the fact that every figure of a year misses once
// [System.WithholdYear] was called.
const WithheldYear = "site.sky"

// WithholdYear leaves every fact that rests on a year of sun unknown, for who
// judges many variants and cannot wait for a year of each. They then miss
// [WithheldYear], and so do the verdicts on them: nothing is met for it. It is
// called before any fact is asked for.
func (s *System) WithholdYear() { s.subjects["site"][0].typed.(*Site).withheld = true }

// Attribute finds where a fact that is an attribute is written, or would be: the
// block (its own, the settings or bms inside it, or the part that it names), and
// the attribute's declaration. block is nil where the design has no such block.
// ok is false where the id is no attribute's.
func (s *System) Attribute(id string) (block *design.Block, declared *design.Attribute, ok bool) {
	about, name, ok := s.split(id)
	if !ok {
		return nil, nil, false
	}
	e, ok := about.collection.byName[name]
	if !ok || !e.Attribute {
		return nil, nil, false
	}
	b := about.blockOf(e.group)
	for b != nil && b.Part != nil {
		if _, own := b.Values[e.leaf]; own {
			break
		}
		if _, theirs := b.Part.Value(e.leaf); !theirs {
			break
		}
		b = b.Part
	}
	return b, e.Language, true
}

// Subjects gives a collection's subjects in file order; of a single one, that one.
func (s *System) Subjects(collection string) []*Subject { return s.subjects[collection] }

// Subject finds a subject by its id.
func (s *System) Subject(id string) (*Subject, bool) {
	found, ok := s.byID[id]
	return found, ok
}

// Fact derives a fact by its id. ok is false where there is no such fact. A
// codebook's question that the design does not answer is a fact, and unknown:
// its unit and kind are the codebook's to say.
func (s *System) Fact(id string) (Fact, bool) {
	w, ok := s.Work(id)
	if !ok {
		return Fact{}, false
	}
	return w.Fact, true
}

// Work derives a fact by its id and gives its worksheet.
func (s *System) Work(id string) (*Work, bool) {
	about, name, ok := s.split(id)
	if !ok {
		return nil, false
	}
	if question, ok := strings.CutPrefix(name, "declared."); ok {
		book, attribute, ok := strings.Cut(question, ".")
		if !ok || !about.collection.Declares {
			return nil, false
		}
		return about.answer(book, attribute), true
	}
	if _, ok := about.collection.byName[name]; !ok {
		return nil, false
	}
	return about.work(name), true
}

// split parts a fact's id into its subject and the fact's name, which may hold
// dots. The longest subject wins ("protection.bank.house.each").
func (s *System) split(id string) (*Subject, string, bool) {
	for end := len(id); ; {
		end = strings.LastIndexByte(id[:end], '.')
		if end < 0 {
			return nil, "", false
		}
		if about, ok := s.byID[id[:end]]; ok {
			return about, id[end+1:], true
		}
	}
}

// At gives the places that lead to a fact: those of the attributes below it, in
// the order in which they were read, each once. For the id of a subject it gives
// the header of its block (of a controller input that of its first array, of the
// system that of the design).
func (s *System) At(id string) []source.Range {
	if about, ok := s.byID[id]; ok {
		return s.headers(about)
	}
	w, ok := s.Work(id)
	if !ok {
		return nil
	}
	var places []source.Range
	seen := map[*Work]bool{}
	met := map[source.Range]bool{}
	var walk func(*Work)
	walk = func(n *Work) {
		if seen[n] {
			return
		}
		seen[n] = true
		if n.At.Valid() && !met[n.At] {
			met[n.At] = true
			places = append(places, n.At)
		}
		for _, in := range n.Inputs {
			walk(in)
		}
	}
	walk(w)
	return places
}

func (s *System) headers(about *Subject) []source.Range {
	b := about.block
	if in, ok := about.typed.(*Input); ok {
		b = in.arrays[0].block
	}
	if b == nil || !b.Header.Valid() {
		return nil
	}
	return []source.Range{b.Header}
}

// work derives the fact of a name that the collection has.
func (s *Subject) work(name string) *Work {
	e := s.collection.byName[name]
	if w := s.works[e.place]; w != nil {
		return w
	}
	w := &Work{Entry: e, subject: s}
	w.Fact.ID, w.Fact.Unit, w.Fact.Kind = s.id+"."+e.Name, e.Unit, e.Kind
	w.finish(e.derive(s, w))
	s.works[e.place] = w
	return w
}

// answer gives the block's answer to a codebook's question; unknown where it
// has none.
func (s *Subject) answer(book, name string) *Work {
	if w := s.answers[book+"."+name]; w != nil {
		return w
	}
	e := &Entry{Collection: s.collection.Name, Name: "declared." + book + "." + name, Attribute: true, Source: "the design"}
	w := &Work{Entry: e, subject: s}
	w.Fact.ID = s.declaredID(book, name)
	var v *design.Value
	if s.block != nil {
		v = s.block.Declared[book][name]
	}
	if v == nil || v.Attribute == nil {
		w.lack(w.Fact.ID)
		w.finish(value{})
	} else {
		declared := attributeEntry(e.Collection, e.Name, v.Attribute)
		e.Unit, e.Kind, e.Means, e.Language = declared.Unit, declared.Kind, v.Attribute.Means, v.Attribute
		w.Fact.Unit, w.Fact.Kind, w.At = e.Unit, e.Kind, v.At
		if v.Bad {
			w.lack(w.Fact.ID)
		}
		w.finish(attributeValue(e.Kind, v))
	}
	if s.answers == nil {
		s.answers = map[string]*Work{}
	}
	s.answers[book+"."+name] = w
	return w
}

// blockOf gives the block that holds a group's attributes; the subject's own for
// no group. nil where there is none.
func (s *Subject) blockOf(group string) *design.Block {
	if group == "" || s.block == nil {
		return s.block
	}
	return s.block.Child(group)
}

// written gives an attribute's value as it stands in a file.
func (s *Subject) written(e *Entry) (*design.Value, bool) {
	b := s.blockOf(e.group)
	if b == nil {
		return nil, false
	}
	return b.Value(e.leaf)
}

// standIn gives an attribute's documented default.
func (s *Subject) standIn(e *Entry) (value, bool) {
	if e.hasStandIn {
		return e.standIn, true
	}
	b := s.blockOf(e.group)
	if e.Assumes == "" || b == nil {
		return value{}, false
	}
	text, ok := b.Default(e.leaf)
	return value{word: text}, ok
}
