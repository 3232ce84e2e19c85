package diagram

import (
	"stringline/lint"
)

// item is one thing in a chain, drawn once.
type item struct {
	id      string // of its subject; empty for what is no subject by itself
	of      string // the subject that it belongs to, where it is none by itself
	kind    string // "fuse", "cable_run", "string"
	symbol  symbol
	heading string
	lines   []string // what is known of it, and what is to be supplied
	says    string   // in words, for the description
	data    []attribute
	count   string // stands beside the symbol: how many alike, or conductors
	// also are subjects that are not drawn by themselves (data sheets, a
	// controller input): what is found about them is marked here.
	also []string
	// apart marks where circuits were cut off to be drawn by themselves: "from"
	// above the symbol, "to" below it, "" nowhere.
	apart string
	// terminals hang on this item itself, beside the chain that goes on: the
	// loads on a charger's load terminals.
	terminals []*chain
}

// chain is a path from top to bottom. Toward a bank, from joins it at its head;
// away from it, to leaves it at its end.
type chain struct {
	from  []*chain
	items []*item
	to    []*chain
	thick bool // to leaves it by a busbar of its own
}

// section is what hangs on one busbar: a bank with all around it, or circuits
// that are drawn apart from the chain that they belong to.
type section struct {
	title   string
	of      string   // id of the subject whose busbar it is
	sources []*chain // toward the bank
	store   *chain   // the bank itself
	fed     []*chain // away from it
}

// plan is all that is to be drawn.
type plan struct {
	sections  []*section
	grounding *chain
	findings  map[string][]finding // by the subject that they are shown beside
	elsewhere []finding            // of subjects that are not drawn
	left      []string             // blocks that are not drawn, for they name what is not there
}

// survey makes a plan of a design.
func survey(d *lint.DesignResult) *plan {
	r := &reader{d.System, d}
	p := &plan{}
	for _, bank := range d.System.Subjects("banks") {
		p.sections = append(p.sections, r.section(bank))
	}
	p.grounding = r.grounding()
	p.left = r.leftOut()
	p.mark(d)
	return p
}

// each calls visit with every item of the plan, in the order of drawing.
func (p *plan) each(visit func(*item)) {
	var walk func(*chain)
	walk = func(c *chain) {
		for _, f := range c.from {
			walk(f)
		}
		for _, it := range c.items {
			visit(it)
			for _, t := range it.terminals {
				walk(t)
			}
		}
		for _, t := range c.to {
			walk(t)
		}
	}
	for _, s := range p.sections {
		for _, c := range s.chains() {
			walk(c)
		}
	}
	if p.grounding != nil {
		walk(p.grounding)
	}
}

// chains lists what joins the bank's busbar, from top to bottom.
func (s *section) chains() []*chain {
	all := append([]*chain{}, s.sources...)
	if s.store != nil {
		all = append(all, s.store)
	}
	return append(all, s.fed...)
}
