package schedule

import (
	"strings"

	"stringline/lint/facts"
)

// unitedStates adds the labels of the National Electrical Code of 2023 (NFPA 70).
// The code itself was not read; each label says how its article was.
func (b *labeler) unitedStates() {
	for _, input := range b.each("pv_inputs") {
		volts := b.fact(input.ID() + ".voc_cold")
		for _, a := range b.arraysOf(input) {
			b.add(Label{About: a.ID(), Place: b.where(a), Source: "NEC 2023 690.13(B)", Read: copy2020, Lines: []string{
				"PV SYSTEM DISCONNECT", "WARNING: ELECTRIC SHOCK HAZARD", "TERMINALS ON THE LINE AND LOAD SIDES MAY BE ENERGIZED IN THE OPEN POSITION"}})
			b.add(Label{About: a.ID(), Place: b.where(a), Source: "NEC 2023 690.7(D)", Read: summary2023,
				Lines: []string{"MAXIMUM DC VOLTAGE OF PV SYSTEM " + volts.Text}}, volts)
			b.raceway(a)
		}
	}
	b.rapidShutdown()
	for _, bank := range b.each("banks") {
		nominal, short := b.fact(bank.ID()+".nominal"), b.fact(bank.ID()+".short_circuit_current")
		l := Label{About: bank.ID(), Place: b.where(bank), Source: "NEC 2023 706.15(C)", Read: memory,
			Lines: []string{"ENERGY STORAGE SYSTEM DISCONNECT", "NOMINAL VOLTAGE " + nominal.Text + " DC", "AVAILABLE FAULT CURRENT " + short.Text, "DATE OF CALCULATION _____"}}
		// Article 706 speaks of more than 1 kWh.
		energy, ok := b.system.Fact(bank.ID() + ".energy")
		const smallest = 1000 * 3600 // J
		switch {
		case ok && energy.Known && energy.SI <= smallest:
			continue
		case !energy.Known:
			l.If = "the bank holds more than 1 kWh"
		}
		b.add(l, nominal, short)
		if l.If == "" {
			b.ask("bank")
		}
	}
	if len(b.each("pv_inputs")) > 0 {
		b.ask("pv voltage")
	}
	b.directory()
	b.underLoad("NEC 2023 690.15(B)")
	if len(b.each("arrays")) > 0 {
		b.add(Label{About: "system", Place: "at the plugs of the strings, where they are not rated to interrupt", Source: "NEC 2023 690.33", Read: memory,
			Lines: []string{"DO NOT DISCONNECT UNDER LOAD"}})
	}
	for _, o := range b.each("ac_outputs") {
		split, known := b.yes(o.ID() + ".declared.us_2023.split_panel")
		if known && !split {
			continue
		}
		l := Label{About: o.ID(), Place: "at the panel that it feeds", Source: "NEC 2023 710.15(C)", Read: copy2020,
			Lines: []string{"WARNING: SINGLE 120-VOLT SUPPLY", "DO NOT CONNECT MULTIWIRE BRANCH CIRCUITS"}}
		if !known {
			l.If = "it feeds a 120/240 V panel with 120 V"
		}
		b.add(l)
	}
	b.purposes("NEC 2023 110.22(A)", memory)
	b.ask("purpose")
}

// raceway adds the warning on what carries an array's conductors inside.
func (b *labeler) raceway(a *facts.Subject) {
	for _, run := range a.Linked("cable_runs") {
		inside, known := b.yes(run.ID() + ".indoors")
		if known && !inside {
			continue
		}
		l := Label{About: run.ID(), Place: "on raceways, boxes and covers of it, every 3 m (10 ft)", Source: "NEC 2023 690.31(D)(2)", Read: memory,
			Lines: []string{"PHOTOVOLTAIC POWER SOURCE", "(letters of at least 9.5 mm, white on red)"}}
		if !known {
			l.If = "it runs inside a building"
		}
		b.add(l)
	}
}

// rapidShutdown adds the placard and the switch's label where an array stands on
// a building, or may.
func (b *labeler) rapidShutdown() {
	if place, known := b.word("site.place"); known && place != "building" {
		return
	}
	open := ""
	var on []string
	var values []Entry
	lines := []string{"SOLAR PV SYSTEM IS EQUIPPED WITH RAPID SHUTDOWN", "TURN THE RAPID SHUTDOWN SWITCH TO OFF TO SHUT DOWN THE PV SYSTEM AND REDUCE THE SHOCK HAZARD IN THE ARRAY"}
	for _, a := range b.each("arrays") {
		standing, known := b.yes(a.ID() + ".declared.us_2023.on_building")
		mounting, _ := b.word(a.ID() + ".mounting")
		switch {
		case known && !standing:
			continue
		case !known && !strings.HasPrefix(mounting, "roof_"):
			open = "an array stands on or in a building"
		}
		on = append(on, a.ID())
		outside, inside := b.fact(a.ID()+".declared.us_2023.shutdown_voltage_outside"), b.fact(a.ID()+".declared.us_2023.shutdown_voltage_inside")
		lines = append(lines, "("+a.ID()+": "+voltage(outside)+" outside the array, "+voltage(inside)+" inside, within 30 s)")
		values = append(values, outside, inside)
	}
	if len(on) == 0 {
		return
	}
	b.add(Label{About: "system", Place: "at each service location, or where the system's sources are shown; title letters of at least 9.5 mm", Source: "NEC 2023 690.12(D)", Read: memory, Lines: lines, If: open}, values...)
	b.add(Label{About: "system", Place: "at the switch that starts it, or within 1 m of it", Source: "NEC 2023 690.12(D)", Read: memory, Lines: []string{"RAPID SHUTDOWN SWITCH FOR SOLAR PV SYSTEM"}, If: open})
}

// voltage reads a voltage that a code asks about; a silent answer has no unit.
func voltage(e Entry) string {
	if !e.Known {
		return empty("V")
	}
	return e.Text
}

// directory adds the list of power sources that stands at the outside.
func (b *labeler) directory() {
	lines := []string{b.designName() + ": STAND-ALONE POWER SYSTEM", "POWER SOURCES AND WHERE THEY ARE SWITCHED OFF:"}
	var values []Entry
	for _, kind := range []struct{ collection, fact string }{{"arrays", "voc_cold"}, {"banks", "voltage_max"}, {"charge_sources", "charge_voltage"}} {
		for _, s := range b.each(kind.collection) {
			volts := b.fact(s.ID() + "." + kind.fact)
			lines = append(lines, s.ID()+", "+volts.Text+": "+b.switchOf(s)+", stands at _____")
			values = append(values, volts)
		}
	}
	b.add(Label{About: "system", Place: "outside, where it is readily seen", Source: "NEC 2023 710.10, 705.10", Read: summary2023, Lines: lines}, values...)
}

// underLoad warns at switches that may not be opened under load, or may be such.
func (b *labeler) underLoad(source string) {
	for _, s := range b.each("disconnects") {
		breaks, known := b.yes(s.ID() + ".load_break")
		if known && breaks {
			continue
		}
		l := Label{About: s.ID(), Place: "at it", Source: source, Read: memory, Lines: []string{"DO NOT OPEN UNDER LOAD"}}
		if !known {
			l.If = "it may not be opened under load (load_break is not given)"
		}
		b.add(l)
	}
}
