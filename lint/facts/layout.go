package facts

// layout declares the collections, their ids and their links, without facts.
func layout() []*Collection {
	one := func(name, kind, means string) *Collection {
		c := &Collection{Name: name, Single: true, ID: name, Means: means}
		if kind != "" {
			c.kinds = []string{kind}
		}
		return c
	}
	many := func(name, id, means string, kinds []string, links ...Link) *Collection {
		return &Collection{Name: name, ID: id, Means: means, kinds: kinds, Links: links}
	}
	kinds := func(names ...string) []string { return names }
	owns := func(links ...Link) []Link {
		return append(links,
			Link{"cable_runs", "cable_runs", true, "the conductors that leave it, none or one"},
			Link{"protections", "protections", true, "the fuse or breaker of those conductors"},
			Link{"disconnects", "disconnects", true, "the switch beside them"})
	}
	// stands lists what runs, protections and disconnects can stand in.
	stands := func(siblings ...Link) []Link {
		return append(siblings,
			Link{"strings", "strings", true, "the string that it stands in, if it does"},
			Link{"arrays", "arrays", true, "the array that it stands in, if it does"},
			Link{"chargers", "chargers", true, "the charger that it stands in, if it does"},
			Link{"banks", "banks", true, "the bank that it stands in, if it does"},
			Link{"ac_outputs", "ac_outputs", true, "the AC output that it stands in, if it does"},
			Link{"supplies", "supplies", true, "the supply that it stands in, if it does"},
			Link{"charge_sources", "charge_sources", true, "the charge source that it stands in, if it does"},
			Link{"loads", "loads", true, "the load that it stands in, if it does"})
	}
	besideRun := Link{"cable_runs", "cable_runs", true, "the run beside it"}
	besideProtection := Link{"protections", "protections", true, "the protection beside it"}
	besideDisconnect := Link{"disconnects", "disconnects", true, "the disconnect beside it"}

	placed := func(c *Collection) *Collection { c.Placed = true; return c }
	// The design block answers for the system as a whole.
	system := one("system", "", "the system as a whole")
	system.Declares = true
	return []*Collection{
		one("site", "site", "where the system stands"),
		one("grounding", "grounding", "bonds to ground and protection against faults to it"),
		system,
		many("panels", "panel.NAME", "panels' data sheets", kinds("panel")),
		many("controllers", "controller.NAME", "charge controllers' data sheets", kinds("controller")),
		many("batteries", "battery.NAME", "batteries' data sheets", kinds("battery")),
		many("inverters", "inverter.NAME", "inverters' data sheets", kinds("inverter")),
		many("converters", "converter.NAME", "data sheets of converters from one DC voltage to another", kinds("converter")),
		many("strings", "string.ARRAY.NAME", "panels in series; facts are those of one of its parallel strings", kinds("string"),
			owns(Link{"array", "arrays", false, "the array that it belongs to"},
				Link{"pv_input", "pv_inputs", false, "the controller input that it feeds"},
				Link{"panels", "panels", true, "its panels' data sheets, each once"})...),
		many("arrays", "array.NAME", "panels of one orientation; what is electrical is that of the whole controller input", kinds("array"),
			owns(Link{"pv_input", "pv_inputs", false, "the controller input that it feeds"},
				Link{"charger", "chargers", false, "the charger that it feeds"})...),
		many("pv_inputs", "pv_input.CHARGER.N", "controller inputs in use, each with all strings on it", nil,
			Link{"charger", "chargers", false, "the charger that it belongs to"},
			Link{"controller", "controllers", false, "that charger's controller"}),
		many("chargers", "charger.NAME", "charge controllers at work on a bank", kinds("charger"),
			owns(Link{"controller", "controllers", false, "its data sheet"},
				Link{"bank", "banks", false, "the bank that it charges"})...),
		many("banks", "bank.NAME", "batteries in series and parallel", kinds("bank"),
			owns(Link{"battery", "batteries", false, "the battery that it is made of"})...),
		placed(many("cable_runs", "cable_run.OWNER", "pairs of conductors, from the block they stand in toward the bank", kinds("cable_run"),
			stands(besideProtection, besideDisconnect)...)),
		placed(many("protections", "protection.OWNER", "fuses and breakers where they are placed", kinds("fuse", "breaker"),
			stands(besideRun, besideDisconnect)...)),
		placed(many("disconnects", "disconnect.OWNER", "switches that isolate a circuit", kinds("disconnect"),
			stands(besideRun, besideProtection)...)),
		many("ac_outputs", "ac_output.NAME", "inverters at work on a bank", kinds("ac_output"),
			owns(Link{"inverter", "inverters", false, "its data sheet"},
				Link{"bank", "banks", false, "the bank that feeds it"})...),
		many("loads", "load.NAME", "what uses energy", kinds("load"),
			owns(Link{"bank", "banks", false, "the bank that feeds it in the end"},
				Link{"banks", "banks", true, "the bank, where it hangs on the bank itself"},
				Link{"ac_outputs", "ac_outputs", true, "the AC output that it hangs on, if it does"},
				Link{"supplies", "supplies", true, "the supply that it hangs on, if it does"},
				Link{"chargers", "chargers", true, "the charger whose load terminals it hangs on, if it does"})...),
		many("supplies", "supply.NAME", "lower-voltage circuits through a converter", kinds("supply"),
			owns(Link{"converter", "converters", false, "its data sheet"},
				Link{"bank", "banks", false, "the bank that feeds it"})...),
		many("charge_sources", "charge_source.NAME", "other sources that charge the bank", kinds("charge_source"),
			owns(Link{"bank", "banks", false, "the bank that it charges"})...),
		many("readings", "reading.NAME", "measurements made on site", kinds("reading"),
			Link{"strings", "strings", true, "the string that was measured, if one was"},
			Link{"arrays", "arrays", true, "the array that was measured, if one was"},
			Link{"pv_inputs", "pv_inputs", true, "the controller input that was measured, if one was"},
			Link{"chargers", "chargers", true, "the charger that was measured, if one was"},
			Link{"banks", "banks", true, "the bank that was measured, if one was"},
			Link{"ac_outputs", "ac_outputs", true, "the AC output that was measured, if one was"},
			Link{"supplies", "supplies", true, "the supply that was measured, if one was"},
			Link{"charge_sources", "charge_sources", true, "the charge source that was measured, if one was"},
			Link{"loads", "loads", true, "the load that was measured, if one was"}),
	}
}
