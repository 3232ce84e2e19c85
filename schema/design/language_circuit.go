package design

// What stands in circuits, and what is fed by them.

func circuitKinds() []*Kind {
	return []*Kind{
		{
			Name: "cable_run", Single: true, Declares: true,
			Means: "the pair of conductors that leaves the block it stands in",
			Attributes: append(append([]Attribute{
				refers("cable", "cable", "a cable part that stands for what is not spelled out"),
				above("length", "m", 0, 5000, "length, one way"),
			}, cableAttributes(true)...),
				within("ambient", "degC", -60, 120, "hottest air around the conductors"),
				count("grouped", 1, 200, "current-carrying conductors that lie together"),
				word("method", "how it is laid", "conduit", "insulated_wall", "surface", "free_air", "cable_tray", "buried", "direct_buried"),
				word("cores", "single conductors or one cable of several cores", "single", "multi"),
				within("above_roof", "m", 0, 50, "height of a conduit over the roof that it lies on"),
				count("per_pole", 1, 20, "conductors in parallel for each pole").byDefault("1"),
				yesNo("indoors", "runs inside the building"),
				yesNo("sheathed", "runs in a sheath"),
				yesNo("engine_space", "runs through an engine space"),
				within("terminal_temperature", "degC", 40, 150, "temperature marked on the terminals at its ends").byDefault("60 degC"),
				above("grounding_size", "mm2", 0, 1000, "cross-section of the grounding conductor that goes along"),
				word("connector", "make and type of the plugs at its end"),
			),
		},
		{
			Name: "fuse", Part: true, Labeled: true, Single: true, Top: true, Declares: true,
			Means:      "a fuse: as a part its data sheet, in a circuit the protection of the run beside it",
			Attributes: protectionAttributes("fuse", fuseClasses),
		},
		{
			Name: "breaker", Part: true, Labeled: true, Single: true, Top: true, Declares: true,
			Means:      "a circuit breaker: as a part its data sheet, in a circuit the protection of the run beside it",
			Attributes: protectionAttributes("breaker", breakerClasses),
		},
		{
			Name: "disconnect", Single: true, Declares: true,
			Means: "a switch that isolates the circuit it stands in",
			Attributes: []Attribute{
				above("rating", "A", 0, 10000, "rated current"),
				above("voltage", "V", 0, 2000, "rated DC voltage, as wired"),
				yesNo("dc_rated", "rated for direct current"),
				yesNo("load_break", "may be opened under load"),
				count("poles", 1, 8, "poles that it opens"),
			},
		},
		{
			Name: "ac_output", Labeled: true, Top: true, Declares: true, Blocks: circuit(),
			Means: "an inverter put to work on a bank",
			Attributes: []Attribute{
				refers("inverter", "inverter", "the inverter").required(),
				refers("bank", "bank", "the bank that feeds it").required(),
				above("low_cutoff", "V", 0, 1000, "bank voltage at which the inverter switches off, as programmed"),
				number("hours_per_day", 0, 24, "hours a day that the inverter is on").byDefault("24"),
			},
		},
		{
			Name: "load", Labeled: true, Top: true, Declares: true, Blocks: circuit(),
			Means: "something that uses energy",
			Attributes: []Attribute{
				word("from", "what feeds it: bank.NAME, ac_output.NAME, supply.NAME or charger.NAME.load_terminals").required(),
				within("power", "W", 0, 1e6, "power while it runs"),
				number("hours_per_day", 0, 24, "hours a day that it runs"),
				within("daily_energy", "Wh", 0, 1e7, "energy a day, instead of power and hours"),
				within("surge", "W", 0, 1e6, "power at the moment of starting"),
				above("voltage_min", "V", 0, 1000, "lowest voltage that it works at"),
				above("voltage_max", "V", 0, 1000, "highest voltage that it bears"),
				within("between", "h", 0, 24, "clock hours between which it runs").asList(),
				{Name: "months", Form: NumberList, Min: 0, Max: 100, Means: "twelve factors on its energy, January first"},
			},
		},
		{
			Name: "supply", Labeled: true, Top: true, Declares: true, Blocks: circuit(),
			Means: "a lower-voltage circuit through a converter",
			Attributes: []Attribute{
				refers("converter", "converter", "the converter").required(),
				word("from", "what feeds it: bank.NAME").required(),
			},
		},
		{
			Name: "charge_source", Labeled: true, Top: true, Declares: true, Blocks: circuit(),
			Means: "any other source that charges the bank: engine, shore, generator",
			Attributes: []Attribute{
				refers("bank", "bank", "the bank that it charges").required(),
				within("charge_current", "A", 0, 5000, "largest current that it gives"),
				above("charge_voltage", "V", 0, 1000, "highest voltage that it charges at"),
				yesNo("together", "may run while the sun charges"),
				within("cold_charge_cutoff", "degC", -60, 40, "temperature of the bank below which it stops charging"),
			},
		},
	}
}

// cableAttributes are those that a cable part and a cable run share. A run has
// documented defaults; a part does not, for what a data sheet leaves out the
// run answers.
func cableAttributes(run bool) []Attribute {
	material := word("material", "conductor, by its chemical symbol", "Cu", "Al")
	strand := word("strand", "stranding: solid, or a class of IEC 60228", "solid", "class_2", "class_5")
	tinned := yesNo("tinned", "the strands are tinned, which costs a few percent of resistance")
	if run {
		material = material.byDefault("Cu")
		strand = strand.byDefault("class_5 for sizes in mm2, class_2 for AWG and kcmil")
		tinned = tinned.byDefault("false")
	}
	return []Attribute{
		above("size", "mm2", 0, 1000, "cross-section of one conductor"),
		material,
		strand,
		tinned,
		within("insulation", "degC", 40, 250, "highest temperature that the insulation bears"),
		above("voltage", "V", 0, 5000, "rated DC voltage of the insulation"),
		above("ampacity", "A", 0, 5000, "maker's ampacity, which wins over tables"),
		above("resistance", "ohm/m", 0, 1, "maker's resistance of one conductor at 20 degC, which wins over tables"),
	}
}

func protectionAttributes(name string, classes []string) []Attribute {
	return []Attribute{
		refers(name, name, "a part that stands for what is not spelled out").placed(),
		above("rating", "A", 0, 5000, "rated current"),
		above("voltage", "V", 0, 2000, "rated DC voltage, as wired"),
		above("interrupts", "A", 0, 500e3, "largest fault current that it interrupts at that voltage"),
		yesNo("dc_rated", "rated for direct current"),
		yesNo("polarized", "interrupts current in one direction only"),
		count("poles", 1, 8, "poles that it opens"),
		word("class", "class or type, as its standard names it", classes...),
		yesNo("continuous_rated", "may carry its rated current for ever"),
		within("distance", "m", 0, 500, "unprotected conductor between it and the source of fault current").placed(),
	}
}

var (
	fuseClasses = []string{"gPV", "gG", "gR", "gS", "gBat", "aR", "aM", "T", "J", "CC", "CF", "G", "H", "K5", "L", "R", "RK1", "RK5",
		"ANL", "MRBF", "MEGA", "MIDI", "AMG", "blade", "glass", "other"}
	breakerClasses = []string{"B", "C", "D", "K", "Z", "hydraulic_magnetic", "thermal", "molded_case", "other"}
)
