package schedule

import (
	"slices"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/report"
	"stringline/schema/design"
	"stringline/schema/source"
)

// Part is one row of the parts list: a part, and how many of it or how much.
type Part struct {
	Kind     string // "panel", "fuse", "conductor", "load"
	Name     string // of its data sheet; "" where the design spells it out
	Quantity Entry  // a count, or meters of conductor
	Ratings  []Rating
	UsedIn   []string     // ids of the subjects that it stands in or is
	Sheet    source.Range // its data sheet; invalid where the design spells it out
}

// Rating is one figure of a part that matters to who buys it.
type Rating struct {
	Name  string // of the attribute
	Value Entry
}

// PartColumns heads the columns of [Part.Cells].
func PartColumns() []Column {
	return []Column{
		{"kind", "Kind", ""}, {"name", "Data sheet", ""}, {"quantity", "Quantity", ""}, {"unit", "Unit", ""},
		{"ratings", "Ratings", ""}, {"used_in", "Used in", ""}, {"data_sheet", "Place of the data sheet", ""},
	}
}

// Cells gives the row by columns. A count is in pieces, conductor in meters.
func (p Part) Cells() []Entry {
	unit := "pieces"
	if p.Quantity.Unit == "m" {
		unit = "m"
	}
	ratings := make([]string, len(p.Ratings))
	for i, r := range p.Ratings {
		ratings[i] = r.Name + " " + r.Value.Text
	}
	sheet := ""
	if p.Sheet.Valid() {
		sheet = report.Escape(p.Sheet.String())
	}
	return []Entry{words(p.Kind), words(p.Name), p.Quantity, words(unit), words(strings.Join(ratings, "; ")), words(strings.Join(p.UsedIn, " ")), words(sheet)}
}

// sheets says of each kind of data sheet which ratings matter, and where its part
// is used: the collection, and the link that leads from it.
var sheets = []struct {
	kind, collection, users, link string
	ratings                       []string
}{
	{"panel", "panels", "strings", "panels", []string{"pmax", "voc", "isc", "vmp", "imp", "max_system_voltage", "max_series_fuse", "connector", "length", "width", "mass"}},
	{"controller", "controllers", "chargers", "controller", []string{"kind", "pv_voltage_max", "pv_short_circuit_max", "charge_current_max", "bank_voltages"}},
	{"battery", "batteries", "banks", "battery", []string{"chemistry", "nominal", "capacity", "charge_current_max", "discharge_current_max"}},
	{"inverter", "inverters", "ac_outputs", "inverter", []string{"continuous", "surge", "ac_voltage", "dc_min", "dc_max"}},
	{"converter", "converters", "supplies", "converter", []string{"input_min", "input_max", "output", "current"}},
}

// Parts lists every part that the design uses, kind by kind: data sheets, fuses,
// breakers and switches, conductors by size, what charges and what uses energy. A
// data sheet that nothing uses is left out. Of what the design says no more than
// that it is fitted, the quantity is unknown.
func Parts(s *facts.System) []Part {
	r := reader{s}
	var parts []Part
	for _, k := range sheets {
		for _, sheet := range s.Subjects(k.collection) {
			p := Part{Kind: k.kind, Name: name(sheet.ID()), Quantity: r.fact(sheet.ID() + ".quantity")}
			for _, user := range s.Subjects(k.users) {
				if slices.Contains(user.Linked(k.link), sheet) {
					p.UsedIn = append(p.UsedIn, user.ID())
				}
			}
			if len(p.UsedIn) == 0 {
				continue
			}
			p.Ratings = r.ratings(sheet.ID(), k.ratings)
			if b := sheet.Block(); b != nil {
				p.Sheet = b.Header
			}
			parts = append(parts, p)
		}
	}
	parts = append(parts, r.devices("protections", "fuse", "class", "rating", "voltage", "interrupts", "dc_rated")...)
	parts = append(parts, r.devices("protections", "breaker", "rating", "voltage", "interrupts", "dc_rated", "polarized", "poles")...)
	parts = append(parts, r.devices("disconnects", "switch", "rating", "voltage", "dc_rated", "load_break", "poles")...)
	parts = append(parts, r.conductors()...)
	parts = append(parts, r.groundingConductors()...)
	parts = append(parts, r.fitted()...)
	for _, c := range s.Subjects("charge_sources") {
		parts = append(parts, Part{Kind: "charge source", Name: name(c.ID()), Quantity: one(), UsedIn: []string{c.ID()},
			Ratings: r.ratings(c.ID(), []string{"charge_current", "charge_voltage"})})
	}
	for _, l := range s.Subjects("loads") {
		parts = append(parts, Part{Kind: "load", Name: name(l.ID()), Quantity: one(), UsedIn: []string{l.ID()},
			Ratings: r.ratings(l.ID(), []string{"power", "surge", "voltage_min", "voltage_max"})})
	}
	return parts
}

// one is the quantity of what stands for itself.
func one() Entry { return Entry{Text: "1", Known: true, Number: 1, Measured: true} }

// ratings reads attributes of a subject. One that does not belong to it, or that
// nothing hangs on and nobody gave (a list, a word), is left out.
func (r reader) ratings(id string, names []string) []Rating {
	var all []Rating
	for _, n := range names {
		if e := r.fact(id + "." + n); e.Text != "" {
			all = append(all, Rating{n, e})
		}
	}
	return all
}

// devices gathers those of one kind: of one data sheet, or of the same ratings.
func (r reader) devices(collection, kind string, names ...string) []Part {
	var parts []Part
	keys := map[string]int{}
	for _, d := range r.system.Subjects(collection) {
		if own, ok := r.word(d.ID() + ".kind"); ok && own != kind {
			continue
		}
		p := Part{Kind: kind, Ratings: r.ratings(d.ID(), names), Quantity: r.fact(d.ID() + ".quantity"), UsedIn: []string{d.ID()}}
		p.named(d.Block())
		parts = gather(parts, keys, p)
	}
	return parts
}

// named takes over the name of the data sheet that a placed block names.
func (p *Part) named(b *design.Block) {
	if b != nil && b.Part != nil {
		p.Name, p.Sheet = b.Part.Name, b.Part.Header
	}
}

// gather adds a part to those that are alike, or as a row of its own.
func gather(parts []Part, keys map[string]int, p Part) []Part {
	key := []string{p.Kind, p.Name}
	for _, r := range p.Ratings {
		key = append(key, r.Value.Text)
	}
	at, known := keys[strings.Join(key, "\x00")]
	if !known {
		keys[strings.Join(key, "\x00")] = len(parts)
		return append(parts, p)
	}
	parts[at].Quantity = add(parts[at].Quantity, p.Quantity)
	parts[at].UsedIn = append(parts[at].UsedIn, p.UsedIn...)
	return parts
}

// conductors gathers single conductors by size and make; the quantity is both
// ways, all of a pole's, and of all parallel strings.
func (r reader) conductors() []Part {
	var parts []Part
	keys := map[string]int{}
	for _, run := range r.system.Subjects("cable_runs") {
		id := run.ID()
		p := Part{Kind: "conductor", Quantity: r.fact(id + ".conductor_total"), UsedIn: []string{id}}
		p.Ratings = append([]Rating{{"size", r.size(run, "size")}}, r.ratings(id, []string{"material", "strand", "tinned", "insulation", "voltage", "cores"})...)
		p.named(run.Block())
		parts = gather(parts, keys, p)
	}
	return parts
}

// groundingConductors gathers those that go along with a run; one for each way.
func (r reader) groundingConductors() []Part {
	var parts []Part
	keys := map[string]int{}
	for _, run := range r.system.Subjects("cable_runs") {
		size := r.size(run, "grounding_size")
		if !size.Known {
			continue
		}
		parts = gather(parts, keys, Part{Kind: "grounding conductor", Ratings: []Rating{{"size", size}},
			Quantity: r.fact(run.ID() + ".route_total"), UsedIn: []string{run.ID()}})
	}
	return parts
}

// fitted lists what the design says is fitted, and no more.
func (r reader) fitted() []Part {
	var parts []Part
	for attribute, kind := range map[string]string{"ground_fault_protection": "ground-fault protection", "surge_protection": "surge protective device"} {
		if yes, known := r.yes("grounding." + attribute); yes && known {
			parts = append(parts, Part{Kind: kind, Quantity: Entry{Text: empty("")}, UsedIn: []string{"grounding"},
				Ratings: []Rating{{attribute, r.fact("grounding." + attribute)}}})
		}
	}
	slices.SortFunc(parts, func(a, b Part) int { return strings.Compare(a.Kind, b.Kind) })
	return parts
}
