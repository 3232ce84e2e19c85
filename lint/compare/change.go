package compare

import (
	"bytes"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"stringline/schema/design"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// ChangeKind says what became of a value or a block.
type ChangeKind string

// The kinds of change. A value that is written otherwise and means the same
// ("150 mm" for "0.15 m") is none, nor is one that stands elsewhere.
const (
	ValueSet   ChangeKind = "value"           // another value
	ValueNew   ChangeKind = "value_given"     // was not written before
	ValueGone  ChangeKind = "value_taken_out" // is not written any more
	BlockNew   ChangeKind = "block_new"
	BlockGone  ChangeKind = "block_gone"
	PartNew    ChangeKind = "part_in_use"  // a data sheet that the design uses now
	PartGone   ChangeKind = "part_left"    // one that it does not use any more
	FileOther  ChangeKind = "file_content" // a file that the design names has another content
	WaiverNew  ChangeKind = "waiver_new"
	WaiverGone ChangeKind = "waiver_gone"
)

// Change is one thing that is written otherwise.
type Change struct {
	Kind       ChangeKind
	About      string // the block's id, of a gone one the one that it had; of a waiver "RULE on SUBJECT"
	Attribute  string // "" for a whole block
	Was, Now   string // as written, "" where nothing is
	Values     int    // of a whole block: how many values it holds
	WasAt, At  source.Range
	refersWas  []string // ids of parts that the value names
	refersNow  []string
	wholeBlock string // the id on the newer side's terms, for a block that is gone
}

// changes lists what is written otherwise.
func changes(was, now *design.Design, n *names) []Change {
	before := map[string]*design.Block{}
	for _, b := range blocks(was) {
		before[n.id(b.ID())] = b
	}
	after := map[string]*design.Block{}
	var list []Change
	if was.Name != now.Name {
		list = append(list, Change{Kind: ValueSet, About: "design", Attribute: "name", Was: was.Name, Now: now.Name, WasAt: headerOf(was.Head), At: headerOf(now.Head)})
	}
	for _, b := range blocks(now) {
		after[b.ID()] = b
		w, ok := before[b.ID()]
		switch {
		case ok:
			list = append(list, values(w, b, n)...)
		case b.Parent == nil || before[b.Parent.ID()] != nil:
			list = append(list, wholeChange(b, BlockNew, PartNew, b.ID()))
		}
	}
	for _, b := range blocks(was) {
		if id := n.id(b.ID()); after[id] == nil && (b.Parent == nil || after[n.id(b.Parent.ID())] != nil) {
			list = append(list, wholeChange(b, BlockGone, PartGone, id))
		}
	}
	if was.Weather != nil && now.Weather != nil && !bytes.Equal(was.Weather.Text, now.Weather.Text) {
		list = append(list, Change{Kind: FileOther, About: "site", Attribute: "weather", Was: was.Weather.File, Now: now.Weather.File,
			WasAt: source.Range{File: was.Weather.File}, At: source.Range{File: now.Weather.File}})
	}
	return append(list, waivers(was, now, n)...)
}

// blocks lists every block of a design, those inside others after them, then the
// parts that it uses; without waivers.
func blocks(d *design.Design) []*design.Block {
	var all []*design.Block
	var walk func(*design.Block)
	walk = func(b *design.Block) {
		if b.Kind.Name != "waiver" {
			all = append(all, b)
		}
		for _, c := range b.Blocks {
			walk(c)
		}
	}
	if d.Head != nil {
		walk(d.Head)
	}
	for _, b := range d.Blocks {
		walk(b)
	}
	for _, kind := range matchOrder {
		if k := design.KindOf(kind); k != nil && k.Part {
			for _, b := range labelled(d, kind) {
				walk(b)
			}
		}
	}
	return all
}

func wholeChange(b *design.Block, block, part ChangeKind, id string) Change {
	c := Change{Kind: block, About: b.ID(), Values: count(b), wholeBlock: id}
	if b.Kind.Part && b.Parent == nil {
		c.Kind = part
	}
	if block == BlockNew {
		c.At = b.Header
	} else {
		c.WasAt = b.Header
	}
	return c
}

func count(b *design.Block) int {
	n := len(b.Values)
	for _, answers := range b.Declared {
		n += len(answers)
	}
	for _, c := range b.Blocks {
		n += count(c)
	}
	return n
}

// values compares what two blocks say themselves.
func values(was, now *design.Block, n *names) []Change {
	var list []Change
	add := func(attribute string, w, v *design.Value) {
		if c, ok := valueChange(now.ID(), attribute, w, v, n); ok {
			list = append(list, c)
		}
	}
	for i := range now.Kind.Attributes {
		name := now.Kind.Attributes[i].Name
		add(name, was.Values[name], now.Values[name])
	}
	if was.Kind != now.Kind { // a breaker where a fuse was
		for i := range was.Kind.Attributes {
			if name := was.Kind.Attributes[i].Name; !hasAttribute(now.Kind, name) {
				add(name, was.Values[name], nil)
			}
		}
	}
	for _, book := range union(maps.Keys(was.Declared), maps.Keys(now.Declared)) {
		for _, name := range union(maps.Keys(was.Declared[book]), maps.Keys(now.Declared[book])) {
			add("declared."+book+"."+name, was.Declared[book][name], now.Declared[book][name])
		}
	}
	return list
}

func hasAttribute(k *design.Kind, name string) bool {
	_, ok := k.Attribute(name)
	return ok
}

func union(a, b func(func(string) bool)) []string {
	return slices.Compact(slices.Sorted(func(yield func(string) bool) {
		for s := range a {
			if !yield(s) {
				return
			}
		}
		for s := range b {
			if !yield(s) {
				return
			}
		}
	}))
}

func valueChange(about, attribute string, was, now *design.Value, n *names) (Change, bool) {
	c := Change{Kind: ValueSet, About: about, Attribute: attribute}
	if was != nil {
		c.Was, c.WasAt, c.refersWas = written(was), was.At, parts(was)
	}
	if now != nil {
		c.Now, c.At, c.refersNow = written(now), now.At, parts(now)
	}
	switch {
	case was == nil && now == nil:
		return c, false
	case was == nil:
		c.Kind = ValueNew
	case now == nil:
		c.Kind = ValueGone
	case plainValue(was, n) == plainValue(now, &names{}):
		return c, false
	}
	return c, true
}

// parts gives the ids of the data sheets that a value names.
func parts(v *design.Value) []string {
	kind := design.KindOf(v.Attribute.RefersTo)
	if kind == nil || !kind.Part || v.Bad {
		return nil
	}
	var ids []string
	for _, p := range v.Panels {
		ids = append(ids, kind.Name+"."+p.Panel)
	}
	if v.Attribute.Form == design.Word {
		ids = append(ids, kind.Name+"."+v.Text)
	}
	return ids
}

// plainValue gives a value so that two which mean the same are the same text; ids
// and names in it as the newer side has them.
func plainValue(v *design.Value, n *names) string {
	if v.Bad || v.Attribute == nil {
		return "bad " + v.Text
	}
	number := func(si float64) string { return strconv.FormatFloat(quantity.Round(si), 'g', -1, 64) }
	switch a := v.Attribute; a.Form {
	case design.Quantity:
		// What a size is written in says how its strand is taken to be.
		gauge := strings.Contains(v.Written.Symbol, "AWG") || strings.Contains(v.Written.Symbol, "kcmil")
		return fmt.Sprint(number(v.SI), " ", v.Written.Dimension, " ", gauge)
	case design.Number, design.Count:
		return number(v.SI)
	case design.YesNo:
		return strconv.FormatBool(v.Yes)
	case design.QuantityList, design.NumberList:
		texts := make([]string, len(v.List))
		for i, si := range v.List {
			texts[i] = number(si)
		}
		return strings.Join(texts, " ")
	case design.TextList:
		return strings.Join(v.Texts, "\n")
	case design.PanelCounts:
		texts := make([]string, len(v.Panels))
		for i, p := range v.Panels {
			texts[i] = fmt.Sprint(p.Count, " ", n.label("panel", p.Panel))
		}
		slices.Sort(texts)
		return strings.Join(texts, ", ")
	case design.Word:
		if a.RefersTo != "" {
			return n.label(a.RefersTo, v.Text)
		}
		return n.id(v.Text) // from, of: an id; other words hold no dots
	}
	return v.Text
}

// written gives a value as people wrote it.
func written(v *design.Value) string {
	if v.Bad || v.Attribute == nil {
		return "(could not be read)"
	}
	switch a := v.Attribute; a.Form {
	case design.Number, design.Count:
		return strconv.FormatFloat(v.SI, 'g', -1, 64)
	case design.YesNo:
		return strconv.FormatBool(v.Yes)
	case design.QuantityList, design.NumberList:
		texts := make([]string, len(v.List))
		for i, si := range v.List {
			texts[i] = quantity.Format(si, a.Unit)
		}
		return strings.Join(texts, ", ")
	case design.TextList:
		return strings.Join(v.Texts, ", ")
	case design.PanelCounts:
		texts := make([]string, len(v.Panels))
		for i, p := range v.Panels {
			texts[i] = fmt.Sprintf("%d x %s", p.Count, p.Panel)
		}
		return strings.Join(texts, ", ")
	}
	return v.Text
}

// waivers compares the written permissions, each rule and subject by itself.
func waivers(was, now *design.Design, n *names) []Change {
	type permission struct {
		words string
		at    source.Range
	}
	list := func(d *design.Design, n *names) (map[string]permission, []string) {
		all, order := map[string]permission{}, []string(nil)
		for _, w := range d.Waivers {
			words := "until " + w.Expires + ": " + w.Reason
			if w.ApprovedBy != "" {
				words += " (approved by " + w.ApprovedBy + ")"
			}
			for i, on := range w.On {
				at := headerOf(w.Block)
				if i < len(w.OnAt) {
					at = w.OnAt[i]
				}
				key := w.Rule + " on " + n.id(on)
				all[key] = permission{words, at}
				order = append(order, key)
			}
		}
		return all, order
	}
	before, gone := list(was, n)
	after, come := list(now, &names{})
	var changes []Change
	for _, key := range come {
		v := after[key]
		w, ok := before[key]
		switch {
		case !ok:
			changes = append(changes, Change{Kind: WaiverNew, About: key, Now: v.words, At: v.at})
		case w.words != v.words:
			changes = append(changes, Change{Kind: ValueSet, About: key, Attribute: "waiver", Was: w.words, Now: v.words, WasAt: w.at, At: v.at})
		}
	}
	for _, key := range gone {
		if _, ok := after[key]; !ok {
			changes = append(changes, Change{Kind: WaiverGone, About: key, Was: before[key].words, WasAt: before[key].at})
		}
	}
	return changes
}
