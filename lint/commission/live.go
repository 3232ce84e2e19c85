package commission

import (
	"fmt"

	"stringline/lint/facts"
)

const (
	// From memory, common practice: like batteries share within 10 %, and a
	// terminal that is 20 K over its neighbors is loose.
	batteryShare  = 10.0 // %
	terminalRise  = 20.0 // K
	sharePractice = "common practice, from memory"
)

// live fills what is measured while the system works.
func (p *planner) live(s *Section) {
	s.Cautions = append(s.Cautions, "Everything is live: covers stay on but for the one that is measured behind; a clamp meter needs no circuit opened.")
	for _, c := range p.s.Subjects("chargers") {
		if len(p.inputsOf(c)) > 0 {
			p.measure(s, c.ID(), c.ID()+".current", 1, "Charge current into the bank, in steady light and before absorption begins; a bank that is nearly full or cold takes less.")
		}
	}
	for _, kind := range circuitKinds {
		for _, circuit := range p.s.Subjects(kind) {
			for _, run := range circuit.Linked("cable_runs") {
				id := run.ID()
				e := p.most("drop of both conductors", id+".voltage_drop")
				e.Name += ", scaled to the design's current"
				p.byHand(s, id, "drop", "V", 1, p.dropSays(id), e)
			}
		}
	}
	for _, bank := range p.s.Subjects("banks") {
		id, parallel := bank.ID(), max(1, p.count(bank.ID()+".parallel"))
		if parallel > 1 {
			each := id + ".each.current"
			p.measure(s, id, each, parallel, fmt.Sprintf("Current of each of %d strings of batteries, at a high load or charge.", parallel))
			p.apart(s, id, "share", []string{each}, parallel, facts.SpreadOfValue, "How far those currents are from each other, of the smallest.",
				figure("apart", AtMost, batteryShare, "%", sharePractice))
		}
	}
	for _, a := range p.s.Subjects("arrays") {
		var strings []*facts.Subject
		n := 0
		for _, t := range p.s.Subjects("strings") {
			if t.Linked("array")[0] == a {
				strings = append(strings, t)
				n += max(1, p.count(t.ID()+".parallel"))
			}
		}
		if n > 1 {
			l := p.byHand(s, a.ID(), "share", "A", n, "Current of each of its strings at work, in steady light: like ones are alike.",
				figure("like strings apart", AtMost, 100*likeStrings, "%", "IEC 62446-1, transcribed: like strings within 5 %"))
			l.With = ids(strings)
		}
	}
	for _, one := range p.s.Subjects("loads") {
		p.measure(s, one.ID(), one.ID()+".voltage", 1, "Voltage at its terminals while it runs.")
	}
	p.byHand(s, "system", "terminals", "K", 1, "After 30 min at high load: how much warmer the warmest terminal is than its neighbors. Warmer than allowed: switch off, open it, make it anew.",
		figure("warmer than its neighbors", AtMost, terminalRise, "K", sharePractice))
}

// dropSays says at which current a run's drop counts.
func (p *planner) dropSays(run string) string {
	if f, ok := p.fact(run + ".current_operating"); ok {
		return "Volts lost on both conductors at the amperes that flow, times " + show(*inUnit(f.SI, "A"), "A") + " over those amperes. More is a poor joint."
	}
	return "Volts lost on both conductors, scaled from the amperes that flow to those of the design. More is a poor joint."
}

func (p *planner) inputsOf(c *facts.Subject) []*facts.Subject {
	var all []*facts.Subject
	for _, in := range p.s.Subjects("pv_inputs") {
		if in.Linked("charger")[0] == c {
			all = append(all, in)
		}
	}
	return all
}

// functional fills what must switch and is made to.
func (p *planner) functional(s *Section) {
	for _, a := range p.s.Subjects("arrays") {
		p.openPV(s, a)
	}
	for _, bank := range p.s.Subjects("banks") {
		id := bank.ID()
		l := p.line(s, Check, id, "low_voltage", "The low-voltage cut-out opens, and closes again: raise its setting for the test, then set it back and read it back.",
			p.equal("cut-out", id+".low_voltage_disconnect"))
		l.Unit = "V"
		if bank.Linked("battery")[0].Block().Child("bms") != nil {
			l := p.line(s, Check, id, "management", "The management's stop reaches every charger: made to stop by its own means, charging ends before it opens.")
			for _, c := range p.s.Subjects("chargers") {
				if c.Linked("bank")[0] == bank {
					l.With = append(l.With, c.ID())
				}
			}
			l.Caution = "A controller that loses its bank under sun can be destroyed: open the PV switch first unless its maker says that it bears it."
		}
	}
	for _, c := range p.s.Subjects("chargers") {
		p.line(s, Check, c.ID(), "cold", "The cold cut-out ends charging: simulated at its sensor, never by chilling the batteries.", p.equal("no charging below", c.ID()+".settings.cold_charge_cutoff"))
	}
	for _, one := range p.s.Subjects("charge_sources") {
		p.line(s, Check, one.ID(), "transfer", "It starts, charges, stops by itself; where it feeds AC as well the transfer works and the neutral is bonded at one place in either position.",
			p.equal("no charging below", one.ID()+".cold_charge_cutoff"))
	}
	for _, o := range p.s.Subjects("ac_outputs") {
		p.motor(s, o)
		p.line(s, Check, o.ID(), "residual_current", "Every residual-current device of its AC circuits trips on its own button and within its time on a tester.")
	}
	if p.yes("grounding.ground_fault_protection") {
		p.line(s, Check, "grounding", "ground_fault", "The ground-fault protection shows a fault that its maker's test makes, and the alarm is seen where people are.")
	}
}

// openPV opens an array under load, where a device that may do that is there.
func (p *planner) openPV(s *Section, a *facts.Subject) {
	var may []string
	for _, d := range a.Linked("disconnects") {
		if p.yes(d.ID() + ".load_break") {
			may = append(may, d.ID())
		}
	}
	if len(may) > 0 {
		l := p.line(s, Check, a.ID(), "pv_switch", "The PV switch is opened under load: the current ends at once, and both of its poles are dead on the controller's side.")
		l.With = may
	} else {
		l := p.line(s, Check, a.ID(), "pv_switch", "No device of the design may open this array under load: end the charging first, then open and close what there is.")
		l.With = ids(a.Linked("disconnects"), a.Linked("protections"))
		l.Caution = "Never under load: a direct-current arc does not go out by itself."
	}
	if p.yes(a.ID() + ".declared.us_2023.rapid_shutdown") {
		p.byHand(s, a.ID(), "rapid_shutdown", "s", 1, "Rapid shutdown from its initiator: the time until the controlled conductors are at or below their voltage.",
			figure("time", AtMost, 30, "s", "NEC 2023 690.12(B), transcribed: 30 V outside the array boundary and 80 V inside, within 30 s"))
	}
}

// motor starts the load that starts hardest on an inverter.
func (p *planner) motor(s *Section, o *facts.Subject) {
	var hardest *facts.Subject
	most := 0.0
	for _, l := range p.s.Subjects("loads") {
		on := l.Linked("ac_outputs")
		if len(on) == 0 || on[0] != o {
			continue
		}
		surge, known := p.fact(l.ID() + ".surge")
		if known && (hardest == nil || surge.SI > most) {
			hardest, most = l, surge.SI
		}
	}
	says := "The load that starts hardest starts with the bank low and the others on; the inverter stays on."
	l := p.line(s, Check, o.ID(), "start", says, p.least("bank's voltage as it starts", o.ID()+".voltage_lowest"))
	if hardest != nil {
		l.With = []string{hardest.ID()}
	}
}
