package commission

import (
	"fmt"
	"slices"
	"strings"

	"stringline/lint/facts"
)

// order fills the steps of connection: isolate, ground, bank, chargers with their
// settings, arrays, other sources, inverters and converters, loads; and the way
// back.
func (p *planner) order(s *Section) {
	if !p.plan.Standing.Energize {
		s.Cautions = append(s.Cautions, p.plan.Standing.Says+" No step of this section is done before that is put right.")
	}
	if len(p.s.Subjects("arrays")) > 0 {
		s.Cautions = append(s.Cautions, "Bank before array, always: most controllers take their system voltage from the bank, and an array without one can destroy them.")
	}
	s.Cautions = append(s.Cautions, "Stop at the first reading that lies outside its band, and find out why before the next step.")
	var all []string
	for _, kind := range slices.Backward(circuitKinds) { // loads first, the bank last: as it is shut down
		for _, c := range p.s.Subjects(kind) {
			all = append(all, ids(c.Linked("disconnects"), c.Linked("protections"))...)
		}
	}
	l := p.line(s, Do, "system", "isolate", "Open every switch and breaker, leave every fuse out; lock and tag what can be closed by others.")
	l.With = all
	l = p.line(s, Do, "grounding", "ground", "Connect the ground (electrode, hull or chassis) and the bonds of frames and cases, before any live conductor.")
	if p.word("grounding.dc") == "" {
		l.Expect = []Expected{p.equal("grounded side", "grounding.dc")}
	}
	for _, bank := range p.s.Subjects("banks") {
		p.connectBank(s, bank)
		for _, c := range p.s.Subjects("chargers") {
			if c.Linked("bank")[0] == bank {
				p.connectCharger(s, c)
			}
		}
	}
	for _, input := range p.s.Subjects("pv_inputs") {
		p.connectInput(s, input)
	}
	for _, one := range p.s.Subjects("charge_sources") {
		l := p.line(s, Do, one.ID(), "connect", "Check its polarity, program it, close its circuit, start it by itself.")
		l.With = p.circuit(one)
		p.measure(s, one.ID(), one.ID()+".voltage", 1, "Voltage that it gives, at the bank.")
	}
	for _, one := range p.s.Subjects("ac_outputs") {
		p.connectOutput(s, one)
	}
	for _, one := range p.s.Subjects("supplies") {
		l := p.line(s, Do, one.ID(), "connect", "Check the polarity at its input, close its circuit with nothing on its output.")
		l.With = p.circuit(one)
		p.measure(s, one.ID(), one.ID()+".voltage", 1, "Polarity and voltage at its output, nothing connected.")
	}
	for _, one := range p.s.Subjects("loads") {
		l := p.line(s, Do, one.ID(), "connect", "Check its polarity, close its circuit, switch it on by itself. It hangs on "+p.sourceOf(one)+".")
		l.With = p.circuit(one)
	}
	l = p.line(s, Do, "system", "back_out", "To take it out of use, the other way round: loads, inverters and converters, other sources, PV switches, the bank last.")
	l.With = p.wayBack()
}

// circuit gives what is closed with a circuit: its run, protection and switch.
func (p *planner) circuit(c *facts.Subject) []string {
	return ids(c.Linked("cable_runs"), c.Linked("protections"), c.Linked("disconnects"))
}

// wayBack lists what is switched off after what.
func (p *planner) wayBack() []string {
	var all []string
	for _, kind := range []string{"loads", "supplies", "ac_outputs", "charge_sources", "arrays", "chargers", "banks"} {
		for _, one := range p.s.Subjects(kind) {
			all = append(all, one.ID())
		}
	}
	return all
}

func (p *planner) sourceOf(load *facts.Subject) string {
	for _, link := range []string{"ac_outputs", "supplies", "chargers", "banks"} {
		if on := load.Linked(link); len(on) > 0 {
			if link == "chargers" {
				return on[0].ID() + ".load_terminals"
			}
			return on[0].ID()
		}
	}
	return load.Linked("bank")[0].ID()
}

func (p *planner) connectBank(s *Section, bank *facts.Subject) {
	id := bank.ID()
	parallel := max(1, p.count(id+".parallel"))
	var each, main []string
	for _, one := range bank.Linked("protections") {
		if strings.HasSuffix(one.ID(), ".each") {
			each = append(each, one.ID())
		} else {
			main = append(main, one.ID())
		}
	}
	if parallel > 1 {
		l := p.line(s, Do, id, "join", fmt.Sprintf("Join the %d strings of batteries, only when they stand as close in voltage as the section on batteries asks.", parallel))
		l.With = each
		l.Caution = "Once joined they are one source that nothing switches off: cover every terminal as it is made."
	} else if len(each) > 0 {
		p.line(s, Do, id, "join", "Put in the fuse of the string of batteries.").With = each
	}
	l := p.line(s, Do, id, "connect", "Connect its main conductors, main protection out and switch open, the grounded side last where there is one (it is the first to be taken off); then put in the main protection; close its switch with nothing behind it.")
	l.With = append(append(ids(bank.Linked("cable_runs")), main...), ids(bank.Linked("disconnects"))...)
	if f, ok := p.fact(id + ".short_circuit_current"); ok {
		l.Caution = "A slip of a tool here is a short circuit of " + show(*inUnit(f.SI, "A"), "A") + ": insulate the other pole first. While the grounded side is off, a tool between the other pole and grounded metal closes no circuit."
	} else {
		l.Caution = "A slip of a tool here is a short circuit of the whole bank: insulate the other pole first."
	}
	p.measure(s, id, id+".voltage", 1, "Polarity and voltage at the bank's bus.")
}

func (p *planner) connectCharger(s *Section, c *facts.Subject) {
	id := c.ID()
	l := p.line(s, Do, id, "connect", "Check polarity at its battery terminals, then close its circuit to "+c.Linked("bank")[0].ID()+". No PV yet.")
	l.With = p.circuit(c)
	l.Caution = "The wrong way round it is destroyed at once."
	p.measure(s, id, id+".voltage", 1, "Voltage at its battery terminals, against that at the bank: no current flows, they are alike.")
	p.line(s, Check, id, "recognized", "It shows the system voltage of its bank.", p.equal("system voltage", c.Linked("bank")[0].ID()+".system_voltage"))
	p.line(s, Do, id, "program", "Program it and read it back, as the section on settings lists, before any PV is connected.")
}

// connectInput joins the strings of one controller input, holds what they show
// against the controller's limit, and only then connects them to it.
func (p *planner) connectInput(s *Section, input *facts.Subject) {
	arrays := p.arraysOf(input)
	for _, a := range arrays {
		p.joinStrings(s, a)
	}
	says := "Polarity, then open-circuit voltage, on the array's side of its open PV switch."
	switch apart := slices.ContainsFunc(arrays, parts); {
	case len(arrays) > 1:
		says = "Polarity of each of its arrays by itself, alike, before any two are joined: the wrong way round they short each other. " +
			"Then polarity and open-circuit voltage of all, joined, at the ends of the conductors that go to the controller, the controller not connected."
		if apart {
			says += " Open the arrays' switches again before the controller is connected."
		}
	case !apart:
		says = "Polarity, then open-circuit voltage, at the ends of the conductors that go to the controller, not connected to it."
	}
	id := input.ID()
	l := p.measure(s, id, id+".voc", 1, says)
	l.With = ids(arrays)
	if w, ok := p.s.Shows(id, "voc_limit", p.moment()); ok {
		l.Expect = append(l.Expect, expectWork("controller's limit, carried from the coldest morning to now", AtMost, w))
	}
	l.Caution = "Above that limit the controller is destroyed on the first cold morning: do not connect it."
	for _, a := range arrays {
		p.connectArray(s, a)
	}
}

// parts tells whether anything of the design can part an array from its controller.
func parts(a *facts.Subject) bool {
	return len(a.Linked("disconnects"))+len(a.Linked("protections")) > 0
}

func (p *planner) joinStrings(s *Section, a *facts.Subject) {
	var strings []*facts.Subject
	var with []string
	for _, t := range p.s.Subjects("strings") {
		if t.Linked("array")[0] == a {
			strings = append(strings, t)
			with = append(with, append([]string{t.ID()}, p.circuit(t)...)...)
		}
	}
	open := "its switch open"
	if !parts(a) {
		open = "its conductors off the controller"
	}
	l := p.line(s, Do, a.ID(), "strings", fmt.Sprintf("Join %s at the array, %s: each measured, then its plugs, then its fuse where it has one.", counted(len(strings), "block of strings", "blocks of strings"), open))
	l.With = with
	l.Caution = "Live in any light. Fuses and plugs are no switches: put them in only while no current can flow."
}

func (p *planner) connectArray(s *Section, a *facts.Subject) {
	id := a.ID()
	l := p.line(s, Do, id, "connect", "Close its circuit to "+a.Linked("charger")[0].ID()+", only after its open-circuit voltage was found below the controller's limit. The controller begins to charge.")
	l.With = p.circuit(a)
	if !parts(a) {
		l.Caution = "Nothing in the design parts this array from its controller: cover the panels before you join the plugs, and never part them under load."
	} else {
		l.Caution = "Bank connected and settings programmed? Only then."
	}
}

func (p *planner) connectOutput(s *Section, o *facts.Subject) {
	id := o.ID()
	l := p.line(s, Do, id, "connect", "Check polarity at its DC terminals, close its circuit, switch it on with no load.")
	l.With = p.circuit(o)
	battery := o.Linked("bank")[0].Linked("battery")[0]
	switch {
	case p.yes(battery.ID() + ".bms.precharge"):
		// A pre-charge is in the batteries' output: it fills what is joined to it when
		// it switches on, and limits nothing once the bus is live.
		l.Caution = "The batteries' own pre-charge works only while their output switches on: PV switches open, switch it off, close this circuit, switch it on and wait. Onto a live bus fill the capacitors through a resistor instead. Then the AC side is live."
	case battery.Block().Child("bms") != nil:
		l.Caution = "Fill its capacitors through a resistor before its switch is closed, or the inrush opens the batteries' management and burns contacts. Then the AC side is live."
	default:
		l.Caution = "Fill its capacitors through a resistor before its switch is closed, or the inrush burns contacts and ages fuses. Then the AC side is live."
	}
	p.measure(s, id, id+".voltage", 1, "AC voltage at its output, no load.")
}
