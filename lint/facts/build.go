package facts

import (
	"slices"
	"strconv"
	"strings"

	"stringline/schema/design"
)

// New lays out a design's subjects and their links; it derives nothing yet. A
// block that names something which is not there is left out, and so is what
// hangs on it: the design has a problem that says so. Of two blocks of one name
// the first counts.
func New(d *design.Design) *System { return NewWith(d, &Weathers{}) }

// NewWith is [New] with weather files that other designs have read already.
func NewWith(d *design.Design, weathers *Weathers) *System {
	s := &System{design: d, subjects: map[string][]*Subject{}, byID: map[string]*Subject{}}
	b := &builder{System: s, collections: map[string]*Collection{}}
	for _, c := range Collections() {
		b.collections[c.Name] = c
	}
	b.site = &Site{Subject: b.top("site", "site"), file: d.Weather, weather: weathers.of(d.Weather), shared: weathers}
	b.register(b.site)
	b.register(&Grounding{b.top("grounding", "grounding")})
	b.system = &Whole{Subject: b.subject("system", "system", d.Head), site: b.site}
	b.register(b.system)

	b.parts()
	b.each("bank", b.bank)
	b.each("charger", b.charger)
	b.each("array", b.array)
	b.inputs()
	b.strings()
	b.each("ac_output", b.output)
	b.each("supply", b.supply)
	b.each("charge_source", b.chargeSource)
	b.each("load", b.load)
	b.equipment()
	b.each("reading", b.reading)
	b.whole()
	b.uses()
	b.settle()
	return s
}

type builder struct {
	*System
	collections map[string]*Collection
	site        *Site
	system      *Whole
	losses      []loss
}

// subject makes a subject of a collection; nil where its id is taken.
func (b *builder) subject(collection, id string, block *design.Block) *Subject {
	if _, taken := b.byID[id]; taken {
		return nil
	}
	c := b.collections[collection]
	return &Subject{id: id, collection: c, block: block, works: make([]*Work, len(c.Entries)), links: map[string][]*Subject{}}
}

// top makes one of the subjects that are always there.
func (b *builder) top(collection, kind string) *Subject {
	var block *design.Block
	for _, candidate := range b.design.Blocks {
		if candidate.Kind.Name == kind && block == nil {
			block = candidate
		}
	}
	return b.subject(collection, collection, block)
}

func (b *builder) register(t subject) {
	s := t.self()
	s.typed = t
	b.byID[s.id] = s
	b.subjects[s.collection.Name] = append(b.subjects[s.collection.Name], s)
}

// each calls build with every top-level block of a kind, in file order, and the
// subject made for it.
func (b *builder) each(kind string, build func(*Subject)) {
	for _, block := range b.design.Blocks {
		if block.Kind.Name != kind || block.Name == "" {
			continue
		}
		id := kind + "." + block.Name
		if s := b.subject(collectionOfKind[kind], id, block); s != nil {
			build(s)
		} else {
			b.lose(kind, id, "")
		}
	}
}

var collectionOfKind = map[string]string{
	"bank": "banks", "charger": "chargers", "array": "arrays", "ac_output": "ac_outputs", "supply": "supplies",
	"charge_source": "charge_sources", "load": "loads", "reading": "readings",
	"panel": "panels", "controller": "controllers", "battery": "batteries", "inverter": "inverters", "converter": "converters",
}

// parts registers the data sheets, by place in the files: the design's own
// first, then those of parts files by path.
func (b *builder) parts() {
	for _, kind := range []string{"panel", "controller", "battery", "inverter", "converter"} {
		blocks := make([]*design.Block, 0, len(b.design.Parts[kind]))
		for _, block := range b.design.Parts[kind] {
			blocks = append(blocks, block)
		}
		slices.SortFunc(blocks, func(x, y *design.Block) int { return comparePlaces(b.design.File, x, y) })
		for _, block := range blocks {
			s := b.subject(collectionOfKind[kind], kind+"."+block.Name, block)
			if s == nil {
				continue
			}
			switch kind {
			case "panel":
				b.register(&Panel{Subject: s})
			case "controller":
				b.register(&Controller{Subject: s})
			case "battery":
				b.register(&Battery{Subject: s})
			case "inverter":
				b.register(&Inverter{Subject: s})
			case "converter":
				b.register(&Converter{Subject: s})
			}
		}
	}
}

func comparePlaces(first string, x, y *design.Block) int {
	own := func(b *design.Block) int {
		if b.Header.File == first {
			return 0
		}
		return 1
	}
	if c := own(x) - own(y); c != 0 {
		return c
	}
	if c := strings.Compare(x.Header.File, y.Header.File); c != 0 {
		return c
	}
	if c := x.Header.Start.Byte - y.Header.Start.Byte; c != 0 {
		return c
	}
	return strings.Compare(x.Name, y.Name)
}

// named finds the subject of a kind that an attribute of s names.
func named[T subject](b *builder, s *Subject, attribute, kind string) (found T, ok bool) {
	v, given := s.block.Value(attribute)
	if !given || v.Bad {
		return found, false
	}
	return lookup[T](b, kind+"."+v.Text)
}

func lookup[T subject](b *builder, id string) (found T, ok bool) {
	s, ok := b.byID[id]
	if !ok {
		return found, false
	}
	found, ok = s.typed.(T)
	return found, ok
}

func (s *Subject) link(name string, to ...subject) {
	for _, t := range to {
		s.links[name] = append(s.links[name], t.self())
	}
}

func (b *builder) bank(s *Subject) {
	battery, ok := named[*Battery](b, s, "battery", "battery")
	if !ok {
		b.lose("bank", s.id+".battery", "")
		return
	}
	s.link("battery", battery)
	b.register(&Bank{Subject: s, battery: battery, site: b.site})
}

func (b *builder) charger(s *Subject) {
	bank, there := named[*Bank](b, s, "bank", "bank")
	controller, ok := named[*Controller](b, s, "controller", "controller")
	switch {
	case !there:
		b.lose("charger", s.id+".bank", "")
		return
	case !ok:
		b.lose("charger", s.id+".controller", bank.id)
		return
	}
	c := &Charger{Subject: s, controller: controller, bank: bank, site: b.site}
	s.link("controller", controller)
	s.link("bank", bank)
	bank.chargers = append(bank.chargers, c)
	b.register(c)
}

// array takes in an array if at least one of its strings can be read, together
// with those strings; an array without any would pass every limit.
func (b *builder) array(s *Subject) {
	charger, ok := named[*Charger](b, s, "charger", "charger")
	if !ok {
		b.lose("array", s.id+".charger", "")
		return
	}
	a := &Array{Subject: s, charger: charger, site: b.site}
	for _, block := range s.block.Blocks {
		if block.Kind.Name != "string" || block.Name == "" {
			continue
		}
		id := "string." + s.block.Name + "." + block.Name
		own := b.subject("strings", id, block)
		twice := own == nil || slices.ContainsFunc(a.strings, func(t *String) bool { return t.id == id })
		t, ok := b.panelString(own)
		if twice || !ok {
			a.lost = append(a.lost, id+".panels")
			continue
		}
		t.array = a
		t.link("array", a)
		a.strings = append(a.strings, t)
	}
	number, ok := inputNumber(s)
	switch {
	case !ok:
		b.lose("array", s.id+".pv_input", charger.id)
		return
	case len(a.strings) == 0 && len(a.lost) == 0:
		b.lose("array", s.id+".string", charger.id)
		return
	case len(a.strings) == 0:
		b.lose("array", a.lost[0], charger.id)
		return
	}
	id := charger.block.Name + "." + strconv.Itoa(number)
	i := slices.IndexFunc(charger.inputs, func(in *Input) bool { return in.id == "pv_input."+id })
	if i < 0 {
		in := &Input{Subject: b.subject("pv_inputs", "pv_input."+id, nil), charger: charger, site: b.site}
		in.link("charger", charger)
		in.link("controller", charger.controller)
		charger.inputs = append(charger.inputs, in)
		i = len(charger.inputs) - 1
	}
	in := charger.inputs[i]
	a.input = in
	in.arrays = append(in.arrays, a)
	in.lost = append(in.lost, a.lost...)
	charger.lost = append(charger.lost, a.lost...)
	b.system.lost = append(b.system.lost, a.lost...)
	s.link("pv_input", in)
	s.link("charger", charger)
	for _, t := range a.strings {
		t.input = in
		t.link("pv_input", in)
		in.strings = append(in.strings, t)
	}
	b.register(a)
}

// inputNumber reads which input of its controller an array uses: 1 where it does
// not say.
func inputNumber(s *Subject) (int, bool) {
	v, given := s.block.Value("pv_input")
	switch {
	case !given:
		return 1, true
	case v.Bad:
		return 0, false
	}
	return int(v.SI), true
}

func (b *builder) panelString(s *Subject) (*String, bool) {
	if s == nil {
		return nil, false
	}
	v, given := s.block.Value("panels")
	if !given || v.Bad || len(v.Panels) == 0 {
		return nil, false
	}
	t := &String{Subject: s}
	for _, p := range v.Panels {
		panel, ok := lookup[*Panel](b, "panel."+p.Panel)
		if !ok {
			return nil, false
		}
		t.panels = append(t.panels, panelsOf{panel, float64(p.Count)})
		s.link("panels", panel)
	}
	return t, true
}

// inputs registers controller inputs: by charger as the file has them, then by
// number.
func (b *builder) inputs() {
	for _, s := range b.subjects["chargers"] {
		c := s.typed.(*Charger)
		slices.SortStableFunc(c.inputs, func(x, y *Input) int { return number(x.id) - number(y.id) })
		for _, in := range c.inputs {
			b.register(in)
		}
	}
}

func number(id string) int {
	n, _ := strconv.Atoi(id[strings.LastIndexByte(id, '.')+1:])
	return n
}

func (b *builder) strings() {
	for _, s := range b.subjects["arrays"] {
		for _, t := range s.typed.(*Array).strings {
			b.register(t)
		}
	}
}

func (b *builder) whole() {
	w := b.system
	for _, s := range b.subjects["pv_inputs"] {
		w.inputs = append(w.inputs, s.typed.(*Input))
	}
	for _, s := range b.subjects["banks"] {
		w.banks = append(w.banks, s.typed.(*Bank))
	}
}
