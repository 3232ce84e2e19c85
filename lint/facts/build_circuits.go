package facts

import (
	"strings"

	"stringline/schema/design"
)

// What a bank feeds and what else charges it, and the runs, protections and
// disconnects in every circuit.

func (b *builder) output(s *Subject) {
	bank, there := named[*Bank](b, s, "bank", "bank")
	inverter, ok := named[*Inverter](b, s, "inverter", "inverter")
	switch {
	case !there:
		b.lose("ac_output", s.id+".bank", "")
		return
	case !ok:
		b.lose("ac_output", s.id+".inverter", bank.id)
		return
	}
	o := &Output{Subject: s, inverter: inverter, bank: bank}
	s.link("inverter", inverter)
	s.link("bank", bank)
	bank.outputs = append(bank.outputs, o)
	b.register(o)
}

func (b *builder) supply(s *Subject) {
	from, given := s.block.Value("from")
	if !given || from.Bad {
		b.lose("supply", s.id+".from", "")
		return
	}
	bank, there := lookup[*Bank](b, from.Text)
	converter, ok := named[*Converter](b, s, "converter", "converter")
	switch {
	case !there:
		b.lose("supply", s.id+".from", "")
		return
	case !ok:
		b.lose("supply", s.id+".converter", bank.id)
		return
	}
	p := &Supply{Subject: s, converter: converter, bank: bank}
	s.link("converter", converter)
	s.link("bank", bank)
	bank.supplies = append(bank.supplies, p)
	b.register(p)
}

func (b *builder) chargeSource(s *Subject) {
	bank, ok := named[*Bank](b, s, "bank", "bank")
	if !ok {
		b.lose("charge_source", s.id+".bank", "")
		return
	}
	c := &ChargeSource{Subject: s, bank: bank}
	s.link("bank", bank)
	bank.sources = append(bank.sources, c)
	b.register(c)
}

func (b *builder) load(s *Subject) {
	l := &Load{Subject: s}
	if !b.hang(l) {
		b.lose("load", s.id+".from", "")
		return
	}
	s.link("bank", l.bank)
	b.register(l)
}

// hang finds what feeds a load. ok is false where it does not say, or names
// nothing that could.
func (b *builder) hang(l *Load) (ok bool) {
	s := l.Subject
	from, given := s.block.Value("from")
	if !given || from.Bad {
		return false
	}
	source, terminals := strings.CutSuffix(from.Text, ".load_terminals")
	found, ok := b.byID[source]
	if !ok {
		return false
	}
	switch t := found.typed.(type) {
	case *Bank:
		l.bank = t
		t.loads = append(t.loads, l)
		s.link("banks", t)
	case *Output:
		l.output, l.bank = t, t.bank
		t.loads = append(t.loads, l)
		s.link("ac_outputs", t)
	case *Supply:
		l.supply, l.bank = t, t.bank
		t.loads = append(t.loads, l)
		s.link("supplies", t)
	case *Charger:
		if !terminals {
			return false
		}
		l.charger, l.bank = t, t.bank
		t.loads = append(t.loads, l)
		s.link("chargers", t)
	default:
		return false
	}
	return true
}

func (b *builder) reading(s *Subject) {
	v, given := s.block.Value("of")
	if !given || v.Bad {
		return
	}
	end := strings.LastIndexByte(v.Text, '.')
	if end < 0 {
		return
	}
	of, ok := b.byID[strings.TrimSuffix(v.Text[:end], ".each")] // one of a bank's strings of batteries
	if !ok {
		return
	}
	if _, ok := s.collection.Link(of.collection.Name); !ok {
		return
	}
	s.link(of.collection.Name, of.typed)
	b.register(&Reading{Subject: s, of: of.typed})
}

// equipment registers runs, protections and disconnects, owner by owner in the
// order of the facts document's collections.
func (b *builder) equipment() {
	for _, collection := range circuitCollections {
		for _, s := range b.subjects[collection] {
			b.fit(s.typed.(circuits))
		}
	}
}

// circuitCollections are the collections whose subjects own runs, in the order
// in which their runs, protections and disconnects are listed.
var circuitCollections = []string{"strings", "arrays", "chargers", "banks", "ac_outputs", "supplies", "charge_sources", "loads"}

// fit takes in what stands in a circuit's block; of a bank, what stands in its
// main and each blocks and its own disconnect.
func (b *builder) fit(c circuits) {
	s := c.self()
	bank, isBank := c.(*Bank)
	if !isBank {
		b.fitBlock(c, s.block, s.id, false)
		return
	}
	b.fitBlock(c, bank.block, s.id, false)
	b.fitBlock(c, bank.block.Child("main"), s.id, false)
	b.fitBlock(c, bank.block.Child("each"), s.id+".each", true)
	b.beside(c)
}

func (b *builder) fitBlock(c circuits, block *design.Block, id string, each bool) {
	if block == nil {
		return
	}
	o := c.owned()
	for _, inner := range block.Blocks {
		switch inner.Kind.Name {
		case "cable_run":
			if s := b.subject("cable_runs", "cable_run."+id, inner); s != nil {
				r := &Run{Subject: s, circuit: c}
				o.runs = append(o.runs, r)
				b.place(c, r)
			}
		case "fuse", "breaker":
			if s := b.subject("protections", "protection."+id, inner); s != nil {
				p := &Protection{Subject: s, circuit: c, each: each}
				o.protections = append(o.protections, p)
				b.place(c, p)
			}
		case "disconnect":
			if s := b.subject("disconnects", "disconnect."+id, inner); s != nil {
				d := &Disconnect{Subject: s, circuit: c}
				o.disconnects = append(o.disconnects, d)
				b.place(c, d)
			}
		}
	}
	if _, isBank := c.(*Bank); !isBank {
		b.beside(c)
	}
}

// place registers equipment and links it and its owner both ways.
func (b *builder) place(c circuits, t subject) {
	b.register(t)
	c.self().link(t.self().collection.Name, t)
	t.self().link(c.self().collection.Name, c)
}

// beside links run, protection and disconnect of one circuit to each other. The
// protection of each string of batteries stands by itself.
func (b *builder) beside(c circuits) {
	o := c.owned()
	var all []subject
	for _, r := range o.runs {
		all = append(all, r)
	}
	for _, p := range o.protections {
		if !p.each {
			all = append(all, p)
		}
	}
	for _, d := range o.disconnects {
		all = append(all, d)
	}
	for _, x := range all {
		for _, y := range all {
			if x.self().collection != y.self().collection {
				x.self().link(y.self().collection.Name, y)
			}
		}
	}
}
