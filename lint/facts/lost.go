package facts

import (
	"slices"
	"strings"
)

// lose notes that a block of a kind was left out, for all who may have counted
// it: those that hang together with owner, or, where it is not known whose it
// was, all of them. id names what was wrong. It is noted for the end, when all
// who may count it are there.
func (b *builder) lose(kind, id, owner string) {
	b.losses = append(b.losses, loss{kind, id, owner})
}

type loss struct{ kind, id, owner string }

// unread takes in the blocks that the design could not keep, which are not among
// its blocks: the second of one name, one without a usable name, one that the
// parser could not read, or whose keyword is unknown. Where nothing tells what it
// was, it may have been anything.
func (b *builder) unread() {
	for _, p := range b.design.Problems {
		kind, rest, _ := strings.Cut(p.Block, ".")
		switch {
		case p.At.File != b.design.File:
		case p.Kind == "duplicate" && kind == "string":
			array, _, _ := strings.Cut(rest, ".")
			b.loseString("array."+array, p.Block)
		case p.Kind == "duplicate":
			b.lose(kind, p.Block, "")
		case !slices.Contains(costly, p.Kind):
		case kind == "array":
			b.loseString(p.Block, p.Block)
		case p.Block == "":
			for _, kind := range []string{"bank", "array", "charger", "load"} {
				b.lose(kind, "design", "")
			}
		}
	}
}

// costly are the kinds of problem that cost a whole block.
var costly = []string{"syntax", "label", "unknown_block", "later"}

// loseString notes that a string of an array was left out.
func (b *builder) loseString(array, id string) {
	a, ok := lookup[*Array](b, array)
	if !ok {
		return
	}
	a.lost = add(a.lost, id)
	b.lose("array", id, a.charger.id)
}

// settle tells each owner what it may have lost.
func (b *builder) settle() {
	b.unread()
	for _, l := range b.losses {
		b.settleUses(l)
		switch l.kind {
		case "bank":
			b.system.lostBanks = add(b.system.lostBanks, l.id)
		case "array":
			b.system.lost = add(b.system.lost, l.id)
			for c := range all[*Charger](b, "chargers") {
				if l.owner != "" && l.owner != c.id {
					continue
				}
				c.lost = add(c.lost, l.id)
				for _, in := range c.inputs {
					in.lost = add(in.lost, l.id)
				}
			}
		case "charger", "charge_source":
			for bank := range all[*Bank](b, "banks") {
				if l.owner == "" || l.owner == bank.id {
					bank.lost = add(bank.lost, l.id)
				}
			}
		case "ac_output", "supply", "load":
			b.settleFed(l)
		}
	}
}

func (b *builder) settleFed(l loss) {
	for bank := range all[*Bank](b, "banks") {
		if l.owner == "" || l.owner == bank.id {
			bank.lostFed = add(bank.lostFed, l.id)
		}
	}
	if l.kind != "load" {
		return
	}
	for o := range all[*Output](b, "ac_outputs") {
		o.lost = add(o.lost, l.id)
	}
	for p := range all[*Supply](b, "supplies") {
		p.lost = add(p.lost, l.id)
	}
	for c := range all[*Charger](b, "chargers") {
		c.lostLoads = add(c.lostLoads, l.id)
	}
}

func add(ids []string, id string) []string {
	if slices.Contains(ids, id) {
		return ids
	}
	return append(ids, id)
}

// all runs over the subjects of a collection.
func all[T subject](b *builder, collection string) func(func(T) bool) {
	return func(yield func(T) bool) {
		for _, s := range b.subjects[collection] {
			if t, ok := s.typed.(T); ok && !yield(t) {
				return
			}
		}
	}
}
