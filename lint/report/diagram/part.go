package diagram

import "strconv"

// Long chains are parted: circuits that join or leave one of them are drawn apart,
// on a busbar of their own, which can be shared out between columns and sheets.

// part parts every chain that is higher than limit, as far as that helps.
func (p *plan) part(c *canvas, limit float64) {
	var sections []*section
	for _, s := range p.sections {
		sections = append(sections, s)
		var parts []*section
		for _, chain := range s.chains() {
			chain.part(c, limit, &parts)
		}
		sections = append(sections, parts...)
	}
	p.sections = sections
}

// fan is a place where circuits join or leave a chain, and could be drawn apart.
type fan struct {
	chains []*chain
	cut    func() *section
	at     *item // beside which it is said
}

// fans lists where a chain, or one that hangs on it, can be parted so that at least
// so many circuits are drawn apart.
func (part *chain) fans(least int) []fan {
	var all []fan
	if len(part.from) >= least {
		it := part.items[0]
		all = append(all, fan{part.from, func() *section {
			s := &section{title: "What joins at " + it.id, of: it.id, sources: part.from}
			part.from, it.apart = nil, "from"
			return s
		}, it})
	}
	if len(part.to) >= least {
		it := part.items[len(part.items)-1]
		all = append(all, fan{part.to, func() *section {
			s := &section{title: "Busbar of " + it.id, of: it.id, fed: part.to}
			part.to, it.apart = nil, "to"
			return s
		}, it})
	}
	for _, it := range part.items {
		if len(it.terminals) < least {
			continue
		}
		all = append(all, fan{it.terminals, func() *section {
			s := &section{title: "Load terminals of " + it.id, of: it.id, fed: it.terminals}
			it.terminals = nil
			return s
		}, it})
	}
	for _, inner := range part.inner() {
		all = append(all, inner.fans(least)...)
	}
	return all
}

// part cuts fans off a chain until it is no higher than limit: the smallest that
// does it, else the largest and then the next; several circuits together rather
// than one. What is cut off is parted likewise.
func (part *chain) part(c *canvas, limit float64, parts *[]*section) {
	least := 2
	for height := c.height(part); height > limit; height = c.height(part) {
		best, found := fan{}, 0.0
		for _, f := range part.fans(least) {
			sum := 0.0
			for _, h := range c.heights(f.chains) {
				sum += h
			}
			enough, enoughBefore := height-sum <= limit, height-found <= limit
			if enough && (!enoughBefore || sum < found) || !enough && !enoughBefore && sum > found {
				best, found = f, sum
			}
		}
		if found == 0 && least == 1 {
			return
		} else if found == 0 {
			least = 1
			continue
		}
		s := best.cut()
		best.at.lines = append(best.at.lines, apart(len(best.chains))+s.title)
		*parts = append(*parts, s)
		for _, one := range best.chains {
			one.part(c, limit, parts)
		}
	}
}

// apart says that so many circuits are drawn apart.
func apart(n int) string {
	if n == 1 {
		return "drawn apart: "
	}
	return strconv.Itoa(n) + " circuits are drawn apart: "
}

// inner lists the chains that hang on a chain.
func (part *chain) inner() []*chain {
	all := append(append([]*chain{}, part.from...), part.to...)
	for _, it := range part.items {
		all = append(all, it.terminals...)
	}
	return all
}
