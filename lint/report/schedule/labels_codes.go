package schedule

import "slices"

// leadAcid are the chemistries that give off gas and hold acid.
var leadAcid = []string{"flooded", "agm", "gel"}

// international adds the labels of IEC 62548-1, IEC 60364-7-712 and IEC 62485-2.
// All of them are from memory: none was read, and national texts differ.
func (b *labeler) international() {
	for _, input := range b.each("pv_inputs") {
		volts, amps := b.fact(input.ID()+".voc_cold"), b.fact(input.ID()+".isc_max")
		for _, a := range b.arraysOf(input) {
			b.add(Label{About: a.ID(), Place: b.where(a), Source: "IEC 62548-1:2023, marking", Read: memory, Lines: []string{
				"PV ARRAY DC ISOLATOR", "highest voltage " + volts.Text + " DC", "highest short-circuit current " + amps.Text}}, volts, amps)
			b.add(Label{About: a.ID(), Place: "on junction boxes and both ends of the PV cables", Source: "IEC 62548-1:2023, IEC 60364-7-712:2017 712.514", Read: memory,
				Lines: []string{"SOLAR DC", "Active parts inside stay live in daylight after isolation"}})
			b.ask("pv voltage")
		}
	}
	if place, known := b.word("site.place"); len(b.each("arrays")) > 0 && (!known || place == "building") {
		b.add(Label{About: "system", Place: "at the origin of the installation and at each distribution board that it feeds", Source: "IEC 60364-7-712:2017 712.514.101", Read: memory,
			Lines: []string{"PV installation on this building", "isolate before work"}})
	}
	b.underLoad("IEC 62548-1:2023, marking")
	for _, bank := range b.each("banks") {
		more := []string{"no flames, no sparks, no smoking"}
		if chemistry, known := b.word(bank.Linked("battery")[0].ID() + ".chemistry"); known && slices.Contains(leadAcid, chemistry) {
			more = append(more, "explosive gas, corrosive acid: ventilate, eye protection")
		} else if !known {
			more = append(more, "if of lead: explosive gas, corrosive acid")
		}
		volts, ok := b.system.Fact(bank.ID() + ".voltage_max")
		const dangerous = 60 // V DC, IEC 62485-2 and IEC 60364-4-41, from memory
		switch {
		case ok && volts.Known && volts.SI > dangerous, volts.AtLeast != nil && *volts.AtLeast > dangerous:
			more = append(more, "DANGEROUS VOLTAGE")
		case !volts.Known:
			more = append(more, "above 60 V DC: DANGEROUS VOLTAGE")
		}
		b.addBank(bank, Label{Source: "IEC 62485-2, identification labels", Read: memory}, more...)
		b.ask("bank")
	}
	if order := b.shutDown(); len(order) > 0 {
		b.add(Label{About: "system", Place: "at the charge controllers", Source: "IEC 62548-1:2023, shut-down procedure on site", Read: memory, Lines: append([]string{"To shut down, in this order:"}, order...)})
		b.ask("shut down")
	}
}

// marine adds the labels of ISO 13297 and of ABYC E-11 and E-13, from memory.
func (b *labeler) marine() {
	b.purposes("ISO 13297:2020 and ABYC E-11, switches and devices are marked with their use", memory)
	b.ask("purpose")
	for _, bank := range b.each("banks") {
		nominal := b.fact(bank.ID() + ".nominal")
		b.add(Label{About: bank.ID(), Place: "at the DC panel", Source: "ISO 13297:2020 and ABYC E-11, panels are marked with their voltage", Read: memory,
			Lines: []string{"nominal voltage " + nominal.Text + " DC"}}, nominal)
		b.add(Label{About: bank.ID(), Place: b.where(bank), Source: "ISO 13297:2020, battery switch", Read: memory,
			Lines: []string{"battery switch of " + name(bank.ID()), "stays live when it is off: _____ (bilge pumps, alarms)"}})
		chemistry, known := b.word(bank.Linked("battery")[0].ID() + ".chemistry")
		if known && slices.Contains(leadAcid, chemistry) {
			continue
		}
		l := Label{Source: "ABYC E-13 and ISO 23625:2025", Read: memory}
		if !known {
			l.If = "the bank is of lithium"
		}
		b.addBank(bank, l, "to shut it off: "+b.switchOf(bank)+"; what its alarm means: _____")
	}
}

// vehicle adds the labels of AS/NZS 3001.2 and EN 1648.
func (b *labeler) vehicle() {
	const built = "it is built by "
	for _, bank := range b.each("banks") {
		battery := bank.Linked("battery")[0].ID()
		chemistry, nominal := b.fact(battery+".chemistry"), b.fact(bank.ID()+".nominal")
		b.add(Label{About: bank.ID(), Place: "at the batteries", Source: "AS/NZS 3001.2:2022, replacement warning", Read: "read in an installer's summary", If: built + "AS/NZS 3001.2",
			Lines: []string{"replace with the same type alone: " + chemistry.Text + ", " + nominal.Text}}, chemistry, nominal)
		b.add(Label{About: bank.ID(), Place: "at the batteries' compartment", Source: "EN 1648-1 and -2:2018, instructions at the battery", Read: memory, If: built + "EN 1648",
			Lines: []string{"read the instructions before work", "disconnect before charging from outside: _____"}})
	}
	b.add(Label{About: "system", Place: "in the vehicle, with its papers", Source: "AS/NZS 3001.2:2022, user instructions", Read: "read in an installer's summary", If: built + "AS/NZS 3001.2",
		Lines: []string{"instructions for the user, with this one-line diagram"}})
}
