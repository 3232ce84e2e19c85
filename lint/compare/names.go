package compare

import (
	"cmp"
	"slices"
	"strings"

	"stringline/schema/design"
	"stringline/schema/source"
)

// names turns the ids of the older side into those of the newer one, where
// blocks were renamed. The zero value changes nothing.
type names struct {
	to      map[string]string // "charger.main" to "charger.house"
	renamed []Rename
}

// id gives what an id of the older side (of a subject, a block or a fact) is
// called on the newer side.
func (n *names) id(id string) string {
	if len(n.to) == 0 {
		return id
	}
	kind, rest, ok := strings.Cut(id, ".")
	if !ok {
		return id
	}
	label, tail := cutTail(rest)
	switch kind {
	case "cable_run", "protection", "disconnect": // named after what they stand in
		return kind + "." + n.id(rest)
	case "pv_input":
		return kind + "." + n.label("charger", label) + tail
	case "string":
		own, end := cutTail(strings.TrimPrefix(tail, "."))
		if to, ok := n.to[kind+"."+label+"."+own]; ok {
			return to + end
		}
		return kind + "." + n.label("array", label) + tail
	}
	return kind + "." + n.label(kind, label) + tail
}

// cutTail parts a label, which holds no dots, from what follows with its dot.
func cutTail(text string) (label, tail string) {
	if i := strings.IndexByte(text, '.'); i >= 0 {
		return text[:i], text[i:]
	}
	return text, ""
}

func (n *names) label(kind, label string) string {
	if to, ok := n.to[kind+"."+label]; ok {
		return strings.TrimPrefix(to, kind+".")
	}
	return label
}

// words translates every id among a text's words.
func (n *names) words(text string) string {
	if len(n.to) == 0 || !strings.Contains(text, ".") {
		return text
	}
	words := strings.Split(text, " ")
	for i := range words {
		words[i] = n.id(words[i])
	}
	return strings.Join(words, " ")
}

// matchOrder lists the kinds of labelled blocks so that a kind comes after those
// that it refers to: what a block hangs on is known before it is looked at.
var matchOrder = []string{
	"panel", "controller", "battery", "inverter", "converter", "cable", "fuse", "breaker",
	"bank", "charger", "array", "ac_output", "supply", "charge_source", "load", "reading",
}

// How alike two blocks must be to be one that was renamed: the share of their
// values, links included, that are equal. Data sheets of one maker's series are
// much alike although they are different parts.
const (
	alikePart  = 0.9
	alikeBlock = 0.7
	leastEqual = 2 // values: fewer say nothing
)

// match finds the blocks that were renamed.
func match(was, now *design.Design) *names {
	n := &names{to: map[string]string{}}
	for _, kind := range matchOrder {
		n.matchKind(labelled(was, kind), labelled(now, kind))
		if kind != "array" {
			continue
		}
		for _, a := range labelled(was, kind) {
			if b := now.Find(kind, n.label(kind, a.Name)); b != nil {
				n.matchKind(inner(a, "string"), inner(b, "string"))
			}
		}
	}
	return n
}

// labelled gives the blocks of a kind in the order of their places.
func labelled(d *design.Design, kind string) []*design.Block {
	var all []*design.Block
	if k := design.KindOf(kind); k != nil && k.Part {
		for _, b := range d.Parts[kind] {
			all = append(all, b)
		}
		slices.SortFunc(all, byPlace)
		return all
	}
	for _, b := range d.Blocks {
		if b.Kind.Name == kind {
			all = append(all, b)
		}
	}
	return all
}

func byPlace(a, b *design.Block) int {
	return cmp.Or(cmp.Compare(a.Header.File, b.Header.File), cmp.Compare(a.Header.Start.Byte, b.Header.Start.Byte), cmp.Compare(a.Name, b.Name))
}

func inner(b *design.Block, kind string) []*design.Block {
	var all []*design.Block
	for _, c := range b.Blocks {
		if c.Kind.Name == kind {
			all = append(all, c)
		}
	}
	return all
}

// matchKind pairs blocks of one kind in one place: by label, then by likeness,
// the most alike first.
func (n *names) matchKind(was, now []*design.Block) {
	without := func(from, others []*design.Block) []*design.Block {
		return slices.DeleteFunc(slices.Clone(from), func(b *design.Block) bool {
			return b.Name == "" || slices.ContainsFunc(others, func(o *design.Block) bool { return o.Name == b.Name })
		})
	}
	gone, come := without(was, now), without(now, was)
	type candidate struct {
		was, now *design.Block
		alike    float64
	}
	var all []candidate
	after := make([]map[string]string, len(come)) // of each block its values, read once
	for j, c := range come {
		after[j] = leavesOf(c, &names{})
	}
	for _, w := range gone {
		before := leavesOf(w, n)
		for j, c := range come {
			least := alikeBlock
			if c.Kind.Part {
				least = alikePart
			}
			if alike := likeness(before, after[j]); alike >= least {
				all = append(all, candidate{w, c, alike})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b candidate) int { return -cmp.Compare(a.alike, b.alike) })
	taken := map[*design.Block]bool{}
	for _, c := range all {
		if taken[c.was] || taken[c.now] {
			continue
		}
		taken[c.was], taken[c.now] = true, true
		n.to[c.was.ID()] = c.now.ID()
		n.renamed = append(n.renamed, Rename{c.was.ID(), c.now.ID(), c.now.Header})
	}
}

// likeness is the share of two blocks' values that are equal, those of the blocks
// inside them and what they refer to included.
func likeness(was, now map[string]string) float64 {
	equal, all := 0, len(now)
	for path, value := range was {
		other, ok := now[path]
		switch {
		case !ok:
			all++
		case other == value:
			equal++
		}
	}
	if equal < leastEqual {
		return 0
	}
	return float64(equal) / float64(all)
}

// leavesOf gives a block's values by their path inside it, as the newer side has
// names.
func leavesOf(b *design.Block, n *names) map[string]string {
	all := map[string]string{}
	leaves(b, "", n, all)
	return all
}

func leaves(b *design.Block, path string, n *names, into map[string]string) {
	for name, v := range b.Values {
		into[path+name] = plainValue(v, n)
	}
	for book, answers := range b.Declared {
		for name, v := range answers {
			into[path+"declared."+book+"."+name] = plainValue(v, n)
		}
	}
	for _, c := range b.Blocks {
		leaves(c, path+c.Kind.Name+"."+c.Name+".", n, into)
	}
}

// Where a block is written, for people.
func headerOf(b *design.Block) source.Range {
	if b == nil {
		return source.Range{}
	}
	return b.Header
}
