package facts

import (
	"testing"

	"stringline/schema/design"
	"stringline/schema/quantity"
)

// Every attribute that a formula reads exists in the language, in the form that
// the formula takes it for.
func TestHandlesExistInTheLanguage(t *testing.T) {
	if len(handles) == 0 {
		t.Fatal("no attribute is read by a formula")
	}
	for _, h := range handles {
		c, ok := CollectionOf(h.collection)
		if !ok {
			t.Errorf("%s.%s: no such collection", h.collection, h.name)
			continue
		}
		e, ok := c.Entry(h.name)
		switch {
		case !ok || !e.Attribute:
			t.Errorf("%s.%s is read by a formula, but the language has no such attribute", h.collection, h.name)
		case e.Kind != h.kind:
			t.Errorf("%s.%s is read as kind %d, the language has kind %d", h.collection, h.name, h.kind, e.Kind)
		}
	}
}

// Every declared fact lands in a collection that there is.
func TestDeclaredFactsLand(t *testing.T) {
	for _, e := range declared {
		c, ok := CollectionOf(e.Collection)
		if !ok {
			t.Errorf("%s.%s: no such collection", e.Collection, e.Name)
			continue
		}
		if _, ok := c.Entry(e.Name); !ok {
			t.Errorf("%s.%s is declared and not in the table", e.Collection, e.Name)
		}
	}
}

// No two facts, and no fact and link, of a collection have one name; what people
// read is there; units are the documents'.
func TestEntriesAreComplete(t *testing.T) {
	for _, c := range Collections() {
		names := map[string]bool{"id": true, "declared": true}
		for _, l := range c.Links {
			if names[l.Name] {
				t.Errorf("%s: %s stands twice", c.Name, l.Name)
			}
			names[l.Name] = true
			if _, ok := CollectionOf(l.To); !ok {
				t.Errorf("%s: link %s leads to %s, which is no collection", c.Name, l.Name, l.To)
			}
		}
		for _, e := range c.Entries {
			if names[e.Name] {
				t.Errorf("%s: %s stands twice", c.Name, e.Name)
			}
			names[e.Name] = true
			if e.Means == "" || e.Source == "" || !e.Attribute && e.Formula == "" {
				t.Errorf("%s.%s has no meaning, formula or source", c.Name, e.Name)
			}
			units := append([]string{e.Unit}, e.Units...)
			if _, document := quantity.DocumentUnit(e.Over); !document || e.Over != "" && e.Kind != Series {
				t.Errorf("%s.%s runs over %q", c.Name, e.Name, e.Over)
			}
			for _, unit := range units {
				switch _, document := quantity.DocumentUnit(unit); {
				case e.Kind == Word && unit == "word", e.Kind == YesNo && unit == "yes_no":
				case (e.Kind == Quantity || e.Kind == List || e.Kind == Series) && document:
				default:
					t.Errorf("%s.%s: unit %q is none of the documents'", c.Name, e.Name, unit)
				}
			}
		}
	}
}

// A default that the language documents is one that its attribute takes.
func TestDefaultsAreRead(t *testing.T) {
	for _, c := range Collections() {
		for _, e := range c.Entries {
			if !e.Attribute || e.Assumes == "" || e.hasStandIn {
				continue
			}
			block := &design.Block{Kind: design.KindOf(c.kinds[0]), Values: map[string]*design.Value{
				"size": {SI: 1e-6, Written: quantity.MustLookup("mm2")}}}
			text, ok := block.Default(e.leaf)
			if a := e.Language; !ok || len(a.Words) > 0 && !contains(a.Words, text) {
				t.Errorf("%s.%s: default %q cannot be read", c.Name, e.Name, e.Assumes)
			}
		}
	}
}

func contains(words []string, word string) bool {
	for _, w := range words {
		if w == word {
			return true
		}
	}
	return false
}

// Every attribute of a block that stands in the system is a fact, but for
// structure (links) and lists of texts.
func TestEveryAttributeIsAFact(t *testing.T) {
	covered := map[*design.Attribute]bool{}
	for _, c := range Collections() {
		for _, e := range c.Entries {
			if e.Attribute {
				covered[e.Language] = true
			}
		}
	}
	// breaker and cable: the fuse's and the run's attributes stand for them.
	elsewhere := map[string]bool{"design": true, "waiver": true, "cable": true, "breaker": true, "declared": true}
	for _, k := range design.Kinds() {
		if elsewhere[k.Name] {
			continue
		}
		for i := range k.Attributes {
			if a := &k.Attributes[i]; isFact(a) && !covered[a] {
				t.Errorf("attribute %s of %s is no fact", a.Name, k.Name)
			}
		}
	}
	fuse, breaker := design.KindOf("fuse"), design.KindOf("breaker")
	for _, a := range breaker.Attributes {
		if _, ok := fuse.Attribute(a.Name); !ok && isFact(&a) {
			t.Errorf("a breaker's %s is no attribute of a fuse, and so no fact", a.Name)
		}
	}
}
