// Package facts computes what rules judge. It is the only place that knows both
// the design and the physics.
//
// One table declares every fact: [Collections]. Attributes of the language are
// facts and come from [design.Kinds]; the others are declared beside their
// formulas in formulas_*.go. From the table come the derivation, the facts
// document and its schema, the types of a rule's input and the reference page.
//
// Use [New] on a loaded design, then [System.Fact] by id. A fact is derived when
// it is first asked for, once. What it reads is recorded as it is read, so that
// its workings cannot drift from its code. An unknown input makes a fact unknown,
// whatever its formula returns; it then names the attributes that would make it
// known. Nothing here panics on a design that [design.Load] returned.
package facts

import (
	"slices"
	"strings"
	"sync"

	"stringline/schema/design"
	"stringline/schema/quantity"
)

// Kind is the kind of value that a fact has.
type Kind uint8

// The kinds. A Series has its axis beside it; a List is a short list without
// one. Both stay out of what rules see.
const (
	Quantity Kind = iota
	Word
	YesNo
	Series
	List
)

// Entry declares one fact of a collection's subjects.
type Entry struct {
	Collection string
	Name       string // may hold one dot for a group: "settings.absorption"
	Unit       string // the documents' unit: "V", "" for a count, "word", "yes_no"
	Kind       Kind
	Means      string // one line, for people
	Formula    string // in words; empty for an attribute
	Source     string // of the method: a standard, or "common practice"
	// Attribute marks a fact that is written in a design or a data sheet;
	// Language is its declaration there.
	Attribute bool
	Language  *design.Attribute
	// Assumes says what is assumed where the fact itself is an assumption (a
	// constant of a formula, a documented default); empty elsewhere.
	Assumes string
	// Over is the unit of what a series runs over.
	Over string
	// Bound marks a sum, product or largest-of that cannot fall when one of
	// its inputs rises: with unknown parts counted as nothing it still gives
	// a lower bound.
	Bound bool
	// Units are further units that a value may have instead; of a reading's
	// value alone.
	Units []string

	group, leaf string // of Name
	place       int    // in the collection's Entries
	derive      func(s *Subject, w *Work) value
	standIn     value // of an attribute: its documented default
	hasStandIn  bool
}

// Words are the words that a fact of kind Word can have; nil where any will do.
func (e *Entry) Words() []string {
	if e.Language == nil {
		return nil
	}
	return e.Language.Words
}

// Link declares a link from a collection's subjects to those of another.
type Link struct {
	Name, To string
	Many     bool // a list; it may be empty. Otherwise there is exactly one
	Means    string
}

// Collection declares a kind of subject: its facts and its links.
type Collection struct {
	Name    string
	Single  bool   // one object, always there, instead of a list
	ID      string // the pattern of its subjects' ids: "string.ARRAY.NAME"
	Means   string
	Entries []*Entry // attributes as the language orders them, then derived facts
	Links   []Link
	// Placed marks runs, protections and disconnects: one that stands nested
	// in another subject carries its facts alone, so that the tree ends.
	Placed bool
	// Declares tells whether its subjects may answer a codebook's questions.
	Declares bool

	kinds  []string // the language's kinds of block that its subjects stand for
	byName map[string]*Entry
}

// Entry finds a fact's declaration by its name.
func (c *Collection) Entry(name string) (*Entry, bool) {
	e, ok := c.byName[name]
	return e, ok
}

// Link finds a link's declaration by its name.
func (c *Collection) Link(name string) (Link, bool) {
	i := slices.IndexFunc(c.Links, func(l Link) bool { return l.Name == name })
	if i < 0 {
		return Link{}, false
	}
	return c.Links[i], true
}

// Collections gives the one table of facts, in the order of the facts document.
// It is shared and must not be changed.
func Collections() []*Collection { return table() }

// CollectionOf finds a collection by its name.
func CollectionOf(name string) (*Collection, bool) {
	for _, c := range table() {
		if c.Name == name {
			return c, true
		}
	}
	return nil, false
}

// table is put together once, after the package's variables, and with them the
// declarations of all derived facts, are initialized.
var table = sync.OnceValue(assemble)

// assemble joins the language's attributes and the declared facts.
func assemble() []*Collection {
	all := layout()
	for _, c := range all {
		c.byName = map[string]*Entry{}
		for _, kind := range c.kinds {
			c.addAttributes(design.KindOf(kind), "")
		}
		for _, e := range declared {
			if e.Collection == c.Name {
				c.add(e)
			}
		}
	}
	return all
}

// addAttributes adds a kind's attributes, and those of the blocks inside it that
// form a group ("settings", "bms"). Of fuses and breakers, which have the same
// attributes, each is added once.
func (c *Collection) addAttributes(kind *design.Kind, group string) {
	if kind == nil {
		return
	}
	c.Declares = c.Declares || group == "" && kind.Declares
	for i := range kind.Attributes {
		a := &kind.Attributes[i]
		name := joinName(group, a.Name)
		if other, ok := renamed[c.Name+"."+name]; ok {
			name = other
		}
		if _, twice := c.byName[name]; twice || !isFact(a) {
			continue
		}
		c.add(attributeEntry(c.Name, name, a))
	}
	for _, inner := range kind.Blocks {
		if slices.Contains(groups, inner) {
			c.addAttributes(design.KindOf(inner), inner)
		}
	}
}

func (c *Collection) add(e *Entry) {
	if known, twice := c.byName[e.Name]; twice {
		if known.Attribute { // a declaration that says how an attribute is read
			known.derive = e.derive
			if e.Means != "" {
				known.Means = e.Means
			}
			known.Formula, known.Source = e.Formula, e.Source
		}
		return
	}
	e.group, e.leaf = splitName(e.Name)
	if e.Attribute {
		e.leaf = e.Language.Name
	}
	e.place = len(c.Entries)
	c.Entries = append(c.Entries, e)
	c.byName[e.Name] = e
}

// renamed gives another name to the attributes whose own name a derived fact has:
// a run's resistance is that of both its conductors, the attribute is the maker's
// figure for a meter of one.
var renamed = map[string]string{"cable_runs.resistance": "maker_resistance"}

// groups are the blocks whose attributes are facts of the block around them.
var groups = []string{"settings", "bms"}

// isFact tells whether an attribute is a fact. One that says what hangs on what
// is structure: a link, or an id (a controller input's number). A list of texts
// is neither.
func isFact(a *design.Attribute) bool {
	switch {
	case a.RefersTo != "", a.Name == "from", a.Name == "pv_input", a.Form == design.TextList, a.Form == design.PanelCounts:
		return false
	}
	return true
}

func attributeEntry(collection, name string, a *design.Attribute) *Entry {
	e := &Entry{Collection: collection, Name: name, Unit: a.Unit, Means: a.Means, Attribute: true, Language: a, Source: "the design or the data sheet"}
	switch a.Form {
	case design.Word, design.Text, design.Date:
		e.Kind, e.Unit = Word, "word"
	case design.YesNo:
		e.Kind, e.Unit = YesNo, "yes_no"
	case design.QuantityList, design.NumberList:
		e.Kind = List
	}
	if collection == "readings" && a.Name == "value" {
		e.Units = a.Accepts
	}
	if a.Default != "" {
		e.Assumes = a.Default
		e.standIn, e.hasStandIn = parseDefault(a)
	}
	e.derive = func(s *Subject, w *Work) value { return readAttribute(s, e, w) }
	return e
}

// parseDefault reads the documented default of an attribute. ok is false for one
// that hangs on another attribute: [design.Block.Default] resolves it.
func parseDefault(a *design.Attribute) (v value, ok bool) {
	switch a.Form {
	case design.Quantity:
		q, err := quantity.Parse(a.Default)
		return value{number: q.SI}, err == nil
	case design.Number, design.Count:
		n, err := quantity.ParseNumber(a.Default)
		return value{number: n}, err == nil
	case design.Word:
		return value{word: a.Default}, len(a.Words) == 0 || slices.Contains(a.Words, a.Default)
	case design.YesNo:
		return value{yes: a.Default == "true"}, true
	}
	return value{}, false
}

func joinName(group, name string) string {
	if group == "" {
		return name
	}
	return group + "." + name
}

func splitName(name string) (group, leaf string) {
	if before, after, ok := strings.Cut(name, "."); ok {
		return before, after
	}
	return "", name
}
