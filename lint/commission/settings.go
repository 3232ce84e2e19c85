package commission

import (
	"strings"

	"stringline/lint/facts"
)

// settings fills what is programmed into each charger, other source, inverter
// and load cut-out, one line for each value, to be read back.
func (p *planner) settings(s *Section) {
	s.Cautions = append(s.Cautions,
		"By hand, never by a preset alone: automatic detection of the bank's voltage often works only the first time, and a preset may be for other batteries.",
		"Read every value back after the device was off and on again.")
	for _, c := range p.s.Subjects("chargers") {
		p.program(s, c)
	}
	for _, one := range p.s.Subjects("charge_sources") {
		p.set(s, one.ID(), "charge_current", "largest charge current", Equals)
		p.set(s, one.ID(), "charge_voltage", "highest charge voltage", Equals)
		p.set(s, one.ID(), "cold_charge_cutoff", "no charging of the bank below", Equals)
	}
	for _, one := range p.s.Subjects("ac_outputs") {
		p.set(s, one.ID(), "voltage_lowest", "the inverter switches off at", Equals)
		if f, ok := p.fact(one.Linked("inverter")[0].ID() + ".charge_current_max"); ok && f.SI > 0 {
			l := p.line(s, Set, one.ID(), "charge_current", "Its charger, from AC: at most what the bank accepts beside the other sources.",
				p.most("bank accepts", one.Linked("bank")[0].ID()+".charge_current_accepted"))
			l.Unit = "A"
		}
	}
	for _, one := range p.s.Subjects("supplies") {
		l := p.line(s, Set, one.ID(), "output", "Output voltage of the converter.", p.equal("output voltage", one.Linked("converter")[0].ID()+".output"))
		l.Unit = "V"
	}
	for _, bank := range p.s.Subjects("banks") {
		p.set(s, bank.ID(), "low_voltage_disconnect", "loads are cut off at", Equals)
	}
}

// programmed lists a charger's settings: what is programmed into it, in words.
var programmed = []struct{ name, words string }{
	{"bank_voltage", "system voltage, set by hand"},
	{"charge_current", "limit of the charge current"},
	{"absorption", "absorption voltage, at 25 degC"},
	{"float", "float voltage, at 25 degC"},
	{"equalize", "equalizing"},
	{"equalize_voltage", "equalizing voltage, at 25 degC"},
	{"temperature_compensation", "change of the set-points with the bank's temperature, for each cell"},
	{"cold_charge_cutoff", "no charging of the bank below"},
	{"bank_temperature_sensor", "temperature sensor fitted at the bank"},
	{"passcode_changed", "factory's passcode replaced"},
	{"locked", "settings locked against change by hand"},
}

func (p *planner) program(s *Section, c *facts.Subject) {
	for _, set := range programmed {
		if set.name == "equalize_voltage" && p.no(c.ID()+".settings.equalize") {
			continue // nothing reads it
		}
		l := p.set(s, c.ID(), "settings."+set.name, set.words, Equals)
		if set.name == "temperature_compensation" {
			p.compensation(s, l, c)
		}
	}
}

// compensation shows the change for a cell in mV/K, as menus and data sheets do,
// and tells how many cells it is times, since one controller asks for a cell's and
// another for the bank's.
func (p *planner) compensation(s *Section, l *Line, c *facts.Subject) {
	e := &l.Expect[0]
	l.Unit, e.Unit = "mV/K", "mV/K"
	if f, ok := p.fact(e.ID); ok {
		if e.Value = inUnit(f.SI, "mV/K"); f.SI == 0 {
			return
		}
	}
	bank := c.Linked("bank")[0]
	p.line(s, Check, c.ID(), "compensation_cells", "Where the controller asks for the whole bank's change: that of a cell, times the cells of a battery and the batteries in series.",
		p.equal("cells in series in a battery", bank.Linked("battery")[0].ID()+".cells"), p.equal("batteries in series", bank.ID()+".series"))
}

// set adds the line of one value that is programmed.
func (p *planner) set(s *Section, about, name, words, relation string) *Line {
	e := p.expect(words, relation, about+"."+name)
	l := p.line(s, Set, about, strings.TrimPrefix(name, "settings."), capital(words)+".", e)
	l.Unit = e.Unit
	return l
}
