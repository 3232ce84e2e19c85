package commission

import (
	"fmt"
	"strings"

	"stringline/lint/facts"
)

// What is looked at and measured while nothing is connected.

// line adds a line to a section. What it points to is good until the next one.
func (p *planner) line(s *Section, kind, about, what, says string, expect ...Expected) *Line {
	s.Lines = append(s.Lines, Line{Key: s.Key + "|" + about + "|" + what, Kind: kind, About: about, Says: says, Expect: expect, State: ByHand})
	return &s.Lines[len(s.Lines)-1]
}

// circuitKinds are the collections whose subjects conductors leave, in the order
// in which they are looked at: from the bank outward.
var circuitKinds = []string{"banks", "chargers", "strings", "arrays", "charge_sources", "ac_outputs", "supplies", "loads"}

// dead fills the checks before anything is energized.
func (p *planner) dead(s *Section) {
	s.Cautions = append(s.Cautions,
		"Everything open: switches and breakers off, fuses out, the arrays' plugs apart or the panels covered.",
		"Measure that a conductor is dead before you touch it, with a meter that you tried on a live source before and after.")
	for _, bank := range p.s.Subjects("banks") {
		p.lookAtBank(s, bank)
	}
	for _, c := range p.s.Subjects("chargers") {
		p.lookAtCharger(s, c)
	}
	for _, kind := range []struct{ collection, part, what string }{
		{"ac_outputs", "inverter", "inverter"}, {"supplies", "converter", "converter"}, {"charge_sources", "", "charging source"},
	} {
		for _, one := range p.s.Subjects(kind.collection) {
			says := "The " + kind.what + " is the designed one, fixed and switched off."
			if parts := names(one.Linked(kind.part)); len(parts) > 0 {
				says = fmt.Sprintf("The %s is %s, fixed where air can pass, and switched off.", kind.what, strings.Join(parts, ", "))
			}
			p.line(s, Check, one.ID(), "device", says)
		}
	}
	for _, kind := range circuitKinds {
		for _, circuit := range p.s.Subjects(kind) {
			p.lookAtCircuit(s, circuit)
		}
	}
	for _, t := range p.s.Subjects("strings") {
		p.lookAtString(s, t)
	}
	p.lookAtGrounding(s)
}

func (p *planner) lookAtBank(s *Section, bank *facts.Subject) {
	id, battery := bank.ID(), bank.Linked("battery")[0].ID()
	expect := []Expected{p.equal("in series", id+".series"), p.equal("strings in parallel", id+".parallel")}
	if p.count(id+".parallel") != 1 {
		expect = append(expect, p.equal("how they are joined", id+".take_off"), p.equal("one model, one age", id+".matched"))
	}
	says := fmt.Sprintf("Batteries are %s, tied down, terminals covered.", strings.Join(names(bank.Linked("battery")), ", "))
	if gases(p.word(battery + ".chemistry")) {
		says += " The room is aired from below to above the bank, and nothing that sparks stands over it."
	}
	p.line(s, Check, id, "device", says, expect...)
}

// gases tells a chemistry that gives off hydrogen, some in faults alone.
func gases(chemistry string) bool {
	return chemistry == "flooded" || chemistry == "agm" || chemistry == "gel"
}

func (p *planner) lookAtCharger(s *Section, c *facts.Subject) {
	id, controller := c.ID(), c.Linked("controller")[0].ID()
	var expect []Expected
	if p.given(controller+".clearance_min") || p.given(id+".clearance") {
		expect = append(expect, p.least("clear air", controller+".clearance_min"))
	}
	if p.given(id + ".over_bank") {
		expect = append(expect, p.equal("above the bank", id+".over_bank"))
	}
	p.line(s, Check, id, "device", fmt.Sprintf("The controller is %s, upright, with clear air around it, never above a bank that gases.", strings.Join(names(c.Linked("controller")), ", ")), expect...)
}

// lookAtCircuit checks what stands in one circuit: run, protection, disconnect.
func (p *planner) lookAtCircuit(s *Section, circuit *facts.Subject) {
	ac := len(circuit.Linked("ac_outputs")) > 0 // a load on an inverter
	for _, one := range circuit.Linked("cable_runs") {
		id := one.ID()
		expect := []Expected{p.equal("size", id+".area"), p.equal("material", id+".material"), p.equal("strand", id+".strand")}
		if n := p.count(id + ".per_pole"); n > 1 {
			expect = append(expect, p.equal("conductors a pole", id+".per_pole"))
		}
		expect = append(expect, byMaker("torque that the makers of its terminals ask, and that was reached", "N m", "the makers' sheets of both terminals"))
		p.line(s, Check, id, "conductors", "Size and color of both conductors, a label at either end, lugs made for its strand, a tug at every end, terminals at their torque and marked.", expect...)
	}
	for _, one := range circuit.Linked("protections") {
		id := one.ID()
		expect := []Expected{p.equal("device", id+".kind"), p.equal("rating", id+".rating"), p.least("rated voltage", id+".voltage")}
		if !ac || p.given(id+".dc_rated") {
			expect = append(expect, p.equal("for direct current", id+".dc_rated"))
		}
		if !ac || p.given(id+".interrupts") {
			expect = append(expect, p.least("interrupts", id+".interrupts"))
		}
		expect = append(expect, p.ifGiven(Equals, map[string]string{"class": "class", "polarized": "polarized"}, id, "class", "polarized")...)
		expect = append(expect, p.ifGiven(AtLeast, map[string]string{"poles": "poles"}, id, "poles")...)
		expect = append(expect, p.ifGiven(AtMost, map[string]string{"distance": "unprotected conductor"}, id, "distance")...)
		l := p.line(s, Check, id, "device", "Type and marks on the device itself; terminals at their torque.", expect...)
		if p.yes(id + ".polarized") {
			l.Caution = "Polarized: the side marked for the source goes to the source, or it burns as it opens."
		}
	}
	for _, one := range circuit.Linked("disconnects") {
		id := one.ID()
		expect := []Expected{p.least("rating", id+".rating"), p.least("rated voltage", id+".voltage"), p.equal("may be opened under load", id+".load_break")}
		if !ac || p.given(id+".dc_rated") {
			expect = append(expect, p.equal("for direct current", id+".dc_rated"))
		}
		expect = append(expect, p.ifGiven(AtLeast, map[string]string{"poles": "poles"}, id, "poles")...)
		l := p.line(s, Check, id, "device", "Type and marks on the switch itself; it moves freely, and can be locked open.", expect...)
		if p.no(id + ".load_break") {
			l.Caution = "It must not be opened under load: end the current first."
		}
	}
}

// ifGiven expects attributes that are written; a silence about them is no gap.
func (p *planner) ifGiven(relation string, words map[string]string, id string, attributes ...string) []Expected {
	var all []Expected
	for _, a := range attributes {
		if p.given(id + "." + a) {
			all = append(all, p.expect(words[a], relation, id+"."+a))
		}
	}
	return all
}

func (p *planner) lookAtString(s *Section, t *facts.Subject) {
	id := t.ID()
	n := max(1, p.count(id+".parallel"))
	var expect []Expected
	for _, panel := range t.Linked("panels") {
		if p.given(panel.ID() + ".connector") {
			expect = append(expect, p.equal("plugs of "+strings.Join(names([]*facts.Subject{panel}), ""), panel.ID()+".connector"))
		}
	}
	for _, run := range t.Linked("cable_runs") {
		if p.given(run.ID() + ".connector") {
			expect = append(expect, p.equal("plugs of the run", run.ID()+".connector"))
		}
	}
	expect = append([]Expected{p.equal("panels in series", id+".panel_count")}, expect...)
	p.line(s, Check, id, "panels", fmt.Sprintf("%s: panels, frames and plugs sound; every plug mates with one of its own make.", strings.Join(names(t.Linked("panels")), ", ")), expect...)
	l := p.byHand(s, id, "insulation", "ohm", n, "Resistance of each pole against ground, dry and wet parts alike.",
		p.least("insulation resistance", id+".insulation_resistance_min"), p.equal("test voltage", id+".insulation_test_voltage"))
	l.Caution = "Take the controller and any surge arresters off first: the test voltage destroys them. The string stays live while it is tested."
}

func (p *planner) lookAtGrounding(s *Section) {
	const id = "grounding"
	expect := []Expected{p.equal("grounded side", id+".dc")}
	if p.word(id+".dc") != "floating" {
		expect = append(expect, p.equal("connections of the DC system to ground", id+".dc_bonds"))
	}
	if len(p.s.Subjects("ac_outputs")) > 0 {
		expect = append(expect, p.equal("connections of the neutral to ground", id+".neutral_bonds"))
	}
	expect = append(expect, p.equal("ground-fault protection", id+".ground_fault_protection"), p.equal("surge protection", id+".surge_protection"))
	p.line(s, Check, id, "bonds", "Bonds to ground as designed: counted, none besides.", expect...)
	if !p.no(id + ".frames_bonded") {
		p.byHand(s, id, "frames", "ohm", 1, "Resistance from the farthest frame and case to the ground bar, leads of the meter taken off.",
			figure("resistance", AtMost, 1, "ohm", "common practice, from memory"))
	}
}
