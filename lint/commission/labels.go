package commission

import (
	"fmt"
	"strings"

	"stringline/lint/facts"
)

// labels fills what is fitted and left on site. Where a code in force asks for a
// label its clause is named; the others are common practice.
func (p *planner) labels(s *Section) {
	const practice = "common practice"
	source := func(clause string) string {
		if p.inForce("us_2023") {
			return "NEC 2023 " + clause
		}
		return practice
	}
	cite := func(e Expected, clause string) Expected { e.Source = source(clause); return e }
	for _, input := range p.s.Subjects("pv_inputs") {
		l := p.line(s, Check, input.ID(), "label", "At every PV switch, and at the controller: PV, live in any light, both sides may be live when it is open; and these figures.",
			cite(p.equal("highest PV voltage", input.ID()+".voc_cold"), "690.7(D)"), p.equal("largest PV current", input.ID()+".isc_max"))
		for _, a := range p.arraysOf(input) {
			l.With = append(append(l.With, a.ID()), p.circuit(a)...)
		}
	}
	for _, bank := range p.s.Subjects("banks") {
		id := bank.ID()
		l := p.line(s, Check, id, "label", "At the bank and at its switch: the batteries' kind, live always; these figures, and the date.",
			cite(p.equal("nominal voltage", id+".nominal"), "706.15(C)"), p.equal("highest voltage", id+".voltage_max"), cite(p.equal("short-circuit current", id+".short_circuit_current"), "706.15(C)"))
		l.With = ids(bank.Linked("disconnects"), bank.Linked("protections"))
	}
	for _, kind := range []string{"chargers", "charge_sources", "ac_outputs", "supplies", "loads"} {
		for _, one := range p.s.Subjects(kind) {
			if with := p.circuit(one); len(with) > 0 {
				p.line(s, Check, one.ID(), "label", "Conductors, protection and switch of its circuit are labeled with what they serve.").With = with
			}
		}
	}
	for _, a := range p.s.Subjects("arrays") {
		if p.yes(a.ID() + ".declared.us_2023.rapid_shutdown") {
			p.line(s, Check, a.ID(), "rapid_shutdown", "Placard and switch of the rapid shutdown, as NEC 2023 690.12(D) asks.")
		}
	}
	if len(p.s.Subjects("pv_inputs")) > 0 {
		p.line(s, Check, "system", "highest", "At the main switch: the highest DC voltages that are there.",
			p.equal("highest PV voltage", "system.pv_voltage_max"), p.equal("highest DC voltage", "system.dc_voltage_max"))
	}
	l := p.line(s, Check, "system", "shut_down", "The order of shutting down hangs at the main switch.")
	l.With = p.wayBack()
	p.line(s, Check, "system", "left", "On site stay: the one-line diagram as built, data sheets and manuals, the settings, the schedule of wires and labels, this sheet filled in.")
}

// hazards fills the cautions at the head.
func (p *planner) hazards() {
	var h []string
	if len(p.s.Subjects("pv_inputs")) > 0 {
		h = append(h, "An array is live in any light: it cannot be switched off, only parted or covered. Never break PV plugs under load: the arc of direct current does not go out.")
	}
	for _, bank := range p.s.Subjects("banks") {
		text := "A bank cannot be switched off: " + bank.ID() + " gives in a short circuit "
		if f, ok := p.fact(bank.ID() + ".short_circuit_current"); ok {
			text += show(*inUnit(f.SI, "A"), "A") + ", enough to melt a tool and burn a hand."
		} else {
			text += "a current that the design does not tell: count on thousands of amperes."
		}
		h = append(h, text)
		if gases(p.word(bank.Linked("battery")[0].ID() + ".chemistry")) {
			h = append(h, bank.ID()+" is of lead and can give off hydrogen: air the room, no flame and no spark, water at hand against acid.")
		}
	}
	h = append(h, "Insulated tools, eye and face protection against arcs, gloves and meter rated "+p.voltages()+"; no rings, watches or chains; never alone.")
	if len(p.s.Subjects("ac_outputs")) > 0 {
		h = append(h, "An inverter makes mains voltage from the bank: its AC side is live and deadly whenever it is on.")
	}
	h = append(h, p.emergency(),
		"These figures support, and do not replace, the code in force, the makers' manuals and a licensed person, who alone may do this work where the law says so.")
	p.plan.Hazards = h
}

// voltages says what protection must be rated for: DC and AC are told apart.
func (p *planner) voltages() string {
	text := "for the highest DC voltage that is there, which the design does not tell"
	if f, ok := p.fact("system.dc_voltage_max"); ok {
		text = "for " + show(*inUnit(f.SI, "V"), "V") + " DC, the highest that is there"
	}
	most, unknown := 0.0, false
	for _, o := range p.s.Subjects("ac_outputs") {
		f, ok := p.fact(o.Linked("inverter")[0].ID() + ".ac_voltage")
		unknown = unknown || !ok
		most = max(most, f.SI)
	}
	if most > 0 {
		text += ", and for " + show(most, "V") + " AC"
	} else if unknown {
		text += ", and for the inverter's AC voltage"
	}
	return text
}

// emergency says in which order to stop everything.
func (p *planner) emergency() string {
	var steps []string
	add := func(what, without string, subjects ...*facts.Subject) {
		var with, bare []string
		for _, one := range subjects {
			if d := ids(one.Linked("disconnects")); len(d) > 0 {
				with = append(with, d...)
			} else {
				bare = append(bare, one.ID())
			}
		}
		if len(with) > 0 {
			steps = append(steps, what+" ("+strings.Join(with, ", ")+")")
		}
		if len(bare) > 0 {
			steps = append(steps, without+" ("+strings.Join(bare, ", ")+")")
		}
	}
	add("inverters off", "inverters off", p.s.Subjects("ac_outputs")...)
	add("other sources off", "other sources off", p.s.Subjects("charge_sources")...)
	add("PV switches open", "arrays without a switch covered, their breaker open", p.s.Subjects("arrays")...)
	add("the bank's switch open", "a bank without a switch parted at its main protection", p.s.Subjects("banks")...)
	if len(steps) == 0 {
		return "In an emergency: there is nothing here to switch off."
	}
	return fmt.Sprintf("In an emergency: %s. What lies before the switches stays live.", strings.Join(steps, ", then "))
}

// tables fills what each string's meter should show over warmth and light.
func (p *planner) tables() {
	for _, t := range p.s.Subjects("strings") {
		for _, table := range []struct{ name, words, constant string }{
			{"voc_by_cell_temperature", "open-circuit voltage", "at 1000 W/m2"},
			{"voc_by_irradiance", "open-circuit voltage", "with cells at 25 degC"},
			{"isc_by_irradiance", "short-circuit current", "with cells at 25 degC"},
			{"vmp_by_cell_temperature", "voltage at maximum power", "at 1000 W/m2"},
		} {
			w, ok := p.s.Work(t.ID() + "." + table.name)
			if !ok {
				continue
			}
			f := &w.Fact
			out := Table{ID: f.ID, About: t.ID(), Name: table.words, Unit: f.Unit, Over: w.Entry.Over, Constant: table.constant, Missing: f.Missing, Because: f.Because, Assumed: f.Assumed}
			for i := range f.List {
				out.At = append(out.At, *inUnit(f.Over[i], w.Entry.Over))
				out.Values = append(out.Values, *inUnit(f.List[i], f.Unit))
			}
			p.plan.Tables = append(p.plan.Tables, out)
		}
	}
}

// finish numbers the lines and counts.
func (p *planner) finish() {
	sum := &p.plan.Summary
	for i := range p.plan.Sections {
		for j := range p.plan.Sections[i].Lines {
			l := &p.plan.Sections[i].Lines[j]
			sum.Lines++
			l.Number = sum.Lines
			if l.State == ByHand {
				sum.ByHand++
			}
			if l.Of == "" {
				if l.Found != nil && l.State == OutOfBand {
					sum.Apart++
				}
				continue
			}
			sum.Due += l.Due
			sum.Remain += l.Remains
			for _, r := range l.Readings {
				sum.Recorded++
				switch r.State {
				case InBand:
					sum.InBand++
				case OutOfBand:
					sum.OutOfBand++
				case Waived:
					sum.Waived++
				case Unproven:
					sum.Unproven++
				}
			}
		}
	}
}

// Findings tells whether a recorded reading is a finding: it lies outside its
// band, what was due for it is not known, or readings that should agree do not.
func (p *Plan) Findings() bool {
	return p.Summary.OutOfBand+p.Summary.Unproven+p.Summary.Apart > 0
}
