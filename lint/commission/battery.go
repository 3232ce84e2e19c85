package commission

import (
	"fmt"
	"slices"
	"strings"

	"stringline/lint/facts"
)

// batteries fills what is measured before batteries are joined.
func (p *planner) batteries(s *Section) {
	if len(p.s.Subjects("banks")) > 0 {
		s.Cautions = append(s.Cautions,
			"A battery cannot be switched off: insulated tools, no rings, one terminal uncovered at a time.",
			"Batteries that stand at different voltages drive hundreds of amperes through each other when they are joined.")
	}
	for _, bank := range p.s.Subjects("banks") {
		p.bank(s, bank)
	}
}

func (p *planner) bank(s *Section, bank *facts.Subject) {
	id, battery := bank.ID(), bank.Linked("battery")[0].ID()
	series, parallel := p.count(id+".series"), max(1, p.count(id+".parallel"))
	if series > 1 {
		p.byHand(s, id, "one_by_one", "V", series*parallel, "Polarity and voltage of each battery by itself, at rest.", p.least("floor", battery+".discharge_voltage_min"))
	}
	each := id + ".each.voltage"
	p.measure(s, id, each, parallel, fmt.Sprintf("Polarity and voltage of each of %s, at rest, not joined.", counted(parallel, "string of batteries", "strings of batteries")))
	if parallel > 1 {
		l := p.apart(s, id, "apart", []string{each}, parallel, facts.SpreadDifference, "How far the strings are apart in voltage, largest less smallest; a maker's own figure wins.",
			p.most("apart", id+".joining_spread"))
		l.Caution = "Further apart: charge them one by one to the same voltage before they are joined."
	}
	temperature := []Expected{p.least("charged above", battery+".charge_above")}
	if p.given(battery + ".charge_below") {
		temperature = append(temperature, p.most("charged below", battery+".charge_below"))
	}
	p.byHand(s, id, "temperature", "degC", parallel, "Temperature of the batteries, before anything charges them.", temperature...)
	p.byHand(s, id, "charge", "%", parallel, "State of charge as its own display or the maker's table of resting voltages tells.")
	if bank.Linked("battery")[0].Block().Child("bms") != nil {
		var expect []Expected
		for _, a := range []struct{ name, words string }{
			{"charge_cutoff", "opens on charge"}, {"discharge_cutoff", "opens on discharge"}, {"over_voltage", "opens above"},
			{"under_voltage", "opens below"}, {"cold_charge_cutoff", "no charge below"},
		} {
			if a.name == "charge_cutoff" || a.name == "discharge_cutoff" || p.given(battery+".bms."+a.name) {
				expect = append(expect, p.equal(a.words, battery+".bms."+a.name))
			}
		}
		p.line(s, Check, id, "management", "Limits of each battery's management, read back.", expect...)
	}
}

// counted writes a number with what it counts.
func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// strings fills what is measured on each string of panels.
func (p *planner) strings(s *Section) {
	if len(p.s.Subjects("strings")) == 0 {
		return
	}
	open := "The PV switch stays open"
	if slices.ContainsFunc(p.s.Subjects("arrays"), func(a *facts.Subject) bool { return !parts(a) }) {
		open = "The PV switch stays open, the conductors of an array that has none stay off the controller,"
	}
	s.Cautions = append(s.Cautions,
		"Live in any light. "+open+" and the strings' fuses stay out.",
		"Polarity before everything: a string the wrong way round on a bus is a short circuit of the others.",
		"Never part or join PV plugs under load. A short-circuit current is made and ended by a switch rated for it, or with the panels covered.")
	for _, input := range p.s.Subjects("pv_inputs") {
		p.input(s, input)
	}
}

// input measures the strings of one controller input, one block after the
// other, then how far like ones are apart, then the input itself.
func (p *planner) input(s *Section, input *facts.Subject) {
	var like [][]*facts.Subject
	for _, t := range p.s.Subjects("strings") {
		if t.Linked("pv_input")[0] != input {
			continue
		}
		id, n := t.ID(), max(1, p.count(t.ID()+".parallel"))
		whose := "the string"
		if n > 1 {
			whose = fmt.Sprintf("each of %d strings", n)
		}
		p.measure(s, id, id+".voc", n, "Polarity, then open-circuit voltage, of "+whose+".")
		says := "Short-circuit current of " + whose + "."
		for _, panel := range t.Linked("panels") {
			if p.given(panel.ID() + ".isc_bifacial") {
				says += " Light from behind adds to what is due: cover the backs while it is measured."
				break
			}
		}
		p.measure(s, id, id+".isc", n, says)
		like = group(like, t)
	}
	for _, of := range like {
		p.likeOnes(s, of)
	}
}

// likeOnes compares like strings: their voltages, and their currents.
func (p *planner) likeOnes(s *Section, of []*facts.Subject) {
	wanted := 0
	for _, t := range of {
		wanted += max(1, p.count(t.ID()+".parallel"))
	}
	if wanted < 2 {
		return
	}
	for _, q := range []string{"voc", "isc"} {
		var readings []string
		for _, t := range of {
			readings = append(readings, t.ID()+"."+q)
		}
		l := p.apart(s, of[0].ID(), "like_"+q, readings, wanted, facts.SpreadOfDue,
			fmt.Sprintf("How far the %ss of %d like strings are from each other, each as a share of what was due.", quantities[q], wanted),
			figure("apart", AtMost, 100*likeStrings, "%", "IEC 62446-1, transcribed: like strings within 5 %"))
		l.With = ids(of[1:])
	}
}

// group puts a string beside those that are like it: the same panels, as many.
func group(groups [][]*facts.Subject, t *facts.Subject) [][]*facts.Subject {
	for i, g := range groups {
		if panelsOf(g[0]) == panelsOf(t) {
			groups[i] = append(g, t)
			return groups
		}
	}
	return append(groups, []*facts.Subject{t})
}

// panelsOf writes which panels a string has, and how many of each.
func panelsOf(t *facts.Subject) string {
	v, ok := t.Block().Value("panels")
	if !ok {
		return t.ID()
	}
	var b strings.Builder
	for _, c := range v.Panels {
		fmt.Fprintf(&b, "%d x %s;", c.Count, c.Panel)
	}
	return b.String()
}

func (p *planner) arraysOf(input *facts.Subject) []*facts.Subject {
	var all []*facts.Subject
	for _, a := range p.s.Subjects("arrays") {
		if a.Linked("pv_input")[0] == input {
			all = append(all, a)
		}
	}
	return all
}
