package diagram

import (
	"slices"

	"stringline/lint"
	"stringline/lint/facts"
)

// reader reads subjects and facts, and what verdicts say of them.
type reader struct {
	system *facts.System
	design *lint.DesignResult
}

// linked gives the subjects of a collection whose link leads to s, in file order.
func (r *reader) linked(collection, link string, s *facts.Subject) []*facts.Subject {
	var found []*facts.Subject
	for _, candidate := range r.system.Subjects(collection) {
		if slices.Contains(candidate.Linked(link), s) {
			found = append(found, candidate)
		}
	}
	return found
}

func (r *reader) section(bank *facts.Subject) *section {
	s := &section{title: "Busbar of " + bank.ID(), of: bank.ID(), store: r.store(bank)}
	for _, charger := range r.linked("chargers", "bank", bank) {
		s.sources = append(s.sources, r.charger(charger))
	}
	for _, source := range r.linked("charge_sources", "bank", bank) {
		s.sources = append(s.sources, r.chargeSource(source))
	}
	for _, output := range r.linked("ac_outputs", "bank", bank) {
		s.fed = append(s.fed, r.output(output))
	}
	for _, supply := range r.linked("supplies", "bank", bank) {
		s.fed = append(s.fed, r.supply(supply))
	}
	for _, load := range r.linked("loads", "banks", bank) {
		s.fed = append(s.fed, r.load(load, direct))
	}
	return s
}

// Within a circuit the design says what stands in it, not in which order. Devices
// are drawn at the end that fault current comes from: that of a string at its
// combiner, of an array at its strings, all others at the bank.

func (r *reader) charger(s *facts.Subject) *chain {
	c := &chain{}
	head := r.chargerItem(s)
	inputs := r.linked("pv_inputs", "charger", s)
	for _, input := range inputs {
		c.from = append(c.from, r.input(input))
	}
	if len(inputs) == 0 {
		head.lines = append(head.lines, "no array feeds it")
	}
	for _, load := range r.linked("loads", "chargers", s) {
		head.terminals = append(head.terminals, r.load(load, direct))
	}
	c.items = append(c.items, head)
	c.items = append(c.items, r.equipment(s, "cable_runs", "disconnects", "protections")...)
	return c
}

func (r *reader) input(s *facts.Subject) *chain {
	c := &chain{items: []*item{r.inputItem(s)}}
	for _, array := range r.linked("arrays", "pv_input", s) {
		a := &chain{items: append([]*item{r.arrayItem(array)}, r.equipment(array, "protections", "cable_runs", "disconnects")...)}
		for _, str := range r.linked("strings", "array", array) {
			a.from = append(a.from, &chain{items: append([]*item{r.stringItem(str)}, r.equipment(str, "cable_runs", "protections", "disconnects")...)})
		}
		c.from = append(c.from, a)
	}
	return c
}

func (r *reader) chargeSource(s *facts.Subject) *chain {
	return &chain{items: append([]*item{r.chargeSourceItem(s)}, r.equipment(s, "cable_runs", "disconnects", "protections")...)}
}

// store is the bank seen from its busbar: switch, conductors, main device at the
// bank, then the devices of its strings of batteries.
func (r *reader) store(s *facts.Subject) *chain {
	c := &chain{items: r.equipment(s, "disconnects", "cable_runs", "protections")}
	if r.managed(s) {
		c.items = append(c.items, r.managementItem(s))
	}
	c.items = append(c.items, r.bankItem(s))
	return c
}

func (r *reader) output(s *facts.Subject) *chain {
	c := &chain{items: append(r.equipment(s, "protections", "disconnects", "cable_runs"), r.outputItem(s)), thick: true}
	for _, load := range r.linked("loads", "ac_outputs", s) {
		c.to = append(c.to, r.load(load, alternating))
	}
	return c
}

func (r *reader) supply(s *facts.Subject) *chain {
	c := &chain{items: append(r.equipment(s, "protections", "disconnects", "cable_runs"), r.supplyItem(s)), thick: true}
	for _, load := range r.linked("loads", "supplies", s) {
		c.to = append(c.to, r.load(load, direct))
	}
	return c
}

func (r *reader) load(s *facts.Subject, c current) *chain {
	return &chain{items: append(r.equipment(s, "protections", "disconnects", "cable_runs"), r.loadItem(s, c))}
}

// equipment gives what stands in a circuit, kind by kind in the order asked for.
func (r *reader) equipment(owner *facts.Subject, kinds ...string) []*item {
	var items []*item
	for _, kind := range kinds {
		for _, s := range owner.Linked(kind) {
			switch kind {
			case "cable_runs":
				items = append(items, r.runItem(s))
			case "protections":
				items = append(items, r.protectionItem(s, owner))
			case "disconnects":
				items = append(items, r.disconnectItem(s, owner))
			}
		}
	}
	return items
}

// leftOut lists the blocks of the design that are no subjects: they name what is
// not there, and so cannot be drawn.
func (r *reader) leftOut() []string {
	var left []string
	for _, block := range r.system.Design().Blocks {
		switch block.Kind.Name {
		case "bank", "charger", "array", "ac_output", "supply", "charge_source", "load":
		default:
			continue
		}
		id := block.Kind.Name + "." + block.Name
		found, ok := r.system.Subject(id)
		if !ok || found.Block() != block {
			left = append(left, id)
			continue
		}
		for _, inner := range block.Blocks {
			if inner.Kind.Name != "string" {
				continue
			}
			id := "string." + block.Name + "." + inner.Name
			if found, ok := r.system.Subject(id); !ok || found.Block() != inner {
				left = append(left, id)
			}
		}
	}
	return left
}
