package commission

import (
	"strings"

	"stringline/lint/facts"
)

// What is due for each thing that a reading can be of.

const (
	pvBand        = "IEC 62446-1, from memory: 5 % with an irradiance meter in the plane, 10 % without"
	supplyBand    = "IEC 60038, from memory: 10 % either way"
	converterBand = "common practice"
	toleranceAC   = 0.10
	toleranceDC   = 0.05
)

// quantities are what readings can be of, in words.
var quantities = map[string]string{
	"voc": "open-circuit voltage", "isc": "short-circuit current", "vmp": "voltage at maximum power", "imp": "current at maximum power",
	"power": "power", "voltage": "voltage", "current": "current",
}

// splitOf splits what a reading is of into subject and quantity; each tells a
// reading of one of a bank's parallel strings of batteries.
func splitOf(of string) (about, quantity string, each bool) {
	i := strings.LastIndexByte(of, '.')
	if i < 0 {
		return of, "", false
	}
	about, each = strings.CutSuffix(of[:i], ".each")
	return about, of[i+1:], each
}

// due gives what a reading of something must be held against at a moment, the
// value that is due before limits. Where nothing can tell, one entry says so.
func (p *planner) due(of string, now facts.Now) []Expected {
	about, quantity, each := splitOf(of)
	subject, ok := p.s.Subject(about)
	if ok {
		switch subject.Collection().Name {
		case "strings", "arrays", "pv_inputs":
			if w, ok := p.s.Shows(about, quantity, now); ok {
				return []Expected{expectWork(quantities[quantity], Between, w).band(p.tolerance(now.Irradiance != nil), pvBand)}
			}
		case "chargers":
			if due := p.dueOfCharger(subject, quantity, now); due != nil {
				return due
			}
		case "banks":
			if due := p.dueOfBank(subject, quantity, each); due != nil {
				return due
			}
		case "ac_outputs", "supplies", "charge_sources", "loads":
			if due := p.dueBehind(subject, quantity); due != nil {
				return due
			}
		}
	}
	return []Expected{{Name: quantities[quantity], Relation: Between, Supply: "no fact of the design tells what this should be"}}
}

// dueOfCharger: what the light is good for, at least with the losses that the
// design allows for, at most what is set.
func (p *planner) dueOfCharger(c *facts.Subject, quantity string, now facts.Now) []Expected {
	switch quantity {
	case "current", "power":
		most, _ := p.s.Shows(c.ID(), quantity, now)
		least, _ := p.s.Shows(c.ID(), quantity+"_least", now)
		e := expectWork(quantities[quantity]+" into a bank that takes all", Between, most)
		e.Source = "common practice: the band of readings on the PV side, its lower end with the losses that the design allows for"
		if share := p.tolerance(true); e.Value != nil && least.Fact.Known {
			low, high := *inUnit(least.Fact.SI, e.Unit)*(1-share), *e.Value*(1+share)
			e.Low, e.High = &low, &high
		} else if e.Value != nil {
			e.Value, e.Missing, e.Says = nil, least.Fact.Missing, least.Fact.Says
		}
		if quantity == "power" {
			return []Expected{e}
		}
		return []Expected{e, p.most("limit that is set", c.ID()+".charge_current_set")}
	case "voltage":
		return p.busVoltage(c.Linked("bank")[0])
	}
	return nil
}

func (p *planner) busVoltage(bank *facts.Subject) []Expected {
	return []Expected{p.least("floor of its batteries", bank.ID()+".voltage_floor"), p.most("highest on its bus", bank.ID()+".voltage_max")}
}

func (p *planner) dueOfBank(b *facts.Subject, quantity string, each bool) []Expected {
	switch {
	case quantity == "voltage":
		return p.busVoltage(b)
	case quantity == "current" && each:
		return []Expected{p.most("battery's discharge current", b.Linked("battery")[0].ID()+".discharge_current_max")}
	case quantity == "current":
		in, out := p.most("all charging together", b.ID()+".charge_current_total"), p.most("all loads together", b.ID()+".discharge_current_continuous")
		if in.Value != nil && out.Value != nil && *out.Value > *in.Value || in.Value == nil {
			return []Expected{out} // the larger: a reading does not say which way it flows
		}
		return []Expected{in}
	}
	return nil
}

// dueBehind is what is due at inverters, converters, other sources and loads.
func (p *planner) dueBehind(s *facts.Subject, quantity string) []Expected {
	id := s.ID()
	switch s.Collection().Name + " " + quantity {
	case "ac_outputs voltage":
		return []Expected{p.equal("output voltage", s.Linked("inverter")[0].ID()+".ac_voltage").band(toleranceAC, supplyBand)}
	case "ac_outputs power":
		return []Expected{p.most("inverter's continuous power", s.Linked("inverter")[0].ID()+".continuous")}
	case "supplies voltage":
		return []Expected{p.equal("output voltage", s.Linked("converter")[0].ID()+".output").band(toleranceDC, converterBand)}
	case "supplies current":
		return []Expected{p.most("converter's current", s.Linked("converter")[0].ID()+".current")}
	case "charge_sources current":
		return []Expected{p.most("its charge current", id+".charge_current")}
	case "charge_sources voltage":
		return []Expected{p.least("floor of its batteries", s.Linked("bank")[0].ID()+".voltage_floor"), p.most("its charge voltage", id+".charge_voltage")}
	case "loads current":
		return []Expected{p.most("its current", id+".current")}
	case "loads power":
		return []Expected{p.most("its power", id+".power")}
	case "loads voltage":
		if len(s.Linked("ac_outputs")) > 0 {
			return []Expected{p.equal("voltage of its source", id+".source_voltage").band(toleranceAC, supplyBand)}
		}
		highest := p.most("highest of its source", id+".source_voltage_max")
		if p.given(id + ".voltage_max") {
			highest = p.most("highest that it bears", id+".voltage_max")
		}
		return []Expected{p.least("lowest that it works at", id+".voltage_lowest"), highest}
	}
	return nil
}
