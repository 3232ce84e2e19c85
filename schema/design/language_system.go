package design

// The system's blocks (spec part 1). Ranges are wide: they catch a slip of unit or
// decimal point, not a bad design; that is the rules' business.

// circuit names the blocks that the leaving end of a circuit may hold.
func circuit(more ...string) []string {
	return append(more, "cable_run", "fuse", "breaker", "disconnect")
}

func systemKinds() []*Kind {
	return []*Kind{
		{
			Name: "design", Labeled: true, Single: true, Top: true, Declares: true,
			Means: "the head of a design: its title, and which parts and codebooks it uses",
			Attributes: []Attribute{
				text("revision", "the design's revision, as drawings count them"),
				{Name: "parts", Form: TextList, Means: "parts files, paths and globs relative to this file"},
				{Name: "codebooks", Form: TextList, Means: "codebooks besides the workshop's"},
			},
		},
		{
			Name: "site", Single: true, Top: true, Declares: true,
			Means: "where the system stands",
			Attributes: []Attribute{
				within("latitude", "deg", -90, 90, "latitude, north positive"),
				within("longitude", "deg", -180, 180, "longitude, east positive"),
				within("elevation", "m", -450, 6500, "height above sea level"),
				within("coldest", "degC", -90, 40, "coldest air that the array is judged at: extreme annual mean minimum"),
				within("hottest", "degC", -30, 65, "hottest air that the array is judged at: extreme annual mean maximum"),
				word("place", "what the system stands in or on", "building", "ground", "vehicle", "boat"),
				text("weather", "EPW weather file, relative to this file"),
				number("albedo", 0, 1, "share of light that the ground reflects").byDefault("0.2"),
			},
		},
		{
			Name: "bank", Labeled: true, Top: true, Declares: true,
			Blocks: []string{"each", "main", "disconnect"},
			Means:  "batteries of one type, in series and parallel",
			Attributes: []Attribute{
				refers("battery", "battery", "the battery that the bank is made of").required(),
				count("series", 1, 40, "batteries in series in each parallel string").required(),
				count("parallel", 1, 200, "parallel strings of batteries").required(),
				within("coldest", "degC", -60, 50, "coldest air where the bank stands"),
				within("hottest", "degC", -30, 80, "hottest air where the bank stands"),
				word("take_off", "how the parallel strings are joined", "diagonal", "busbar", "one_end"),
				yesNo("matched", "one model, one age, joined within the maker's voltage spread"),
				yesNo("ventilated", "its space is open to the outside air, low and high, so that gas leaves it"),
				above("low_voltage_disconnect", "V", 0, 1000, "bank voltage at which its loads are cut off"),
			},
		},
		{
			Name: "each", Single: true, Blocks: []string{"fuse", "breaker"},
			Means: "what every parallel string of batteries has for itself",
		},
		{
			Name: "main", Single: true, Blocks: []string{"cable_run", "fuse", "breaker"},
			Means: "the bank's common conductor and its protection",
		},
		{
			Name: "charger", Labeled: true, Top: true, Declares: true,
			Blocks: circuit("settings"),
			Means:  "a charge controller put to work on a bank",
			Attributes: []Attribute{
				refers("controller", "controller", "the controller").required(),
				refers("bank", "bank", "the bank that it charges").required(),
				within("hottest", "degC", -30, 90, "hottest air around the controller"),
				within("clearance", "m", 0, 10, "clear air around the controller, at its narrowest"),
				yesNo("over_bank", "stands above the bank, in the way of its gas"),
			},
		},
		{
			Name: "settings", Single: true,
			Means: "what is programmed into a charger",
			Attributes: []Attribute{
				above("bank_voltage", "V", 0, 1000, "system voltage that the controller is set to"),
				within("charge_current", "A", 0, 1000, "limit of the charge current"),
				above("absorption", "V", 0, 1000, "absorption voltage, at 25 degC"),
				above("float", "V", 0, 1000, "float voltage, at 25 degC"),
				yesNo("equalize", "equalizing is switched on"),
				above("equalize_voltage", "V", 0, 1000, "equalizing voltage, at 25 degC"),
				within("temperature_compensation", "V/K", -0.010, 0, "change of the set-points with the bank's temperature, per cell"),
				within("cold_charge_cutoff", "degC", -60, 40, "temperature of the bank below which charging stops"),
				yesNo("bank_temperature_sensor", "a temperature sensor is fitted at the bank"),
				yesNo("passcode_changed", "the factory's passcode was replaced"),
				yesNo("locked", "the settings are locked against change by hand"),
			},
		},
		{
			Name: "array", Labeled: true, Top: true, Declares: true,
			Blocks: circuit("string"),
			Means:  "panels of one orientation on one controller input",
			Attributes: []Attribute{
				refers("charger", "charger", "the charger that it feeds").required(),
				count("pv_input", 1, 32, "which input of the controller").byDefault("1"),
				within("tilt", "deg", 0, 90, "tilt from horizontal"),
				within("azimuth", "deg", 0, 360, "direction it faces, clockwise from true north"),
				word("mounting", "how air gets behind the panels", "open_rack", "roof_standoff", "roof_flush", "portable"),
				within("losses", "%", 0, 90, "soiling, wiring beyond the runs, aging").byDefault("10 %"),
			},
		},
		{
			Name: "string", Labeled: true, Declares: true, Blocks: circuit(),
			Means: "panels in series, and how many such strings in parallel",
			Attributes: []Attribute{
				{Name: "panels", Form: PanelCounts, RefersTo: "panel", Min: 1, Max: 200, Required: true, Means: "which panels, and how many of each in series"},
				count("parallel", 1, 500, "how many such strings in parallel").byDefault("1"),
			},
		},
	}
}

func recordKinds() []*Kind {
	return []*Kind{
		{
			Name: "grounding", Single: true, Top: true, Declares: true,
			Means: "bonds to ground and protection against faults to it",
			Attributes: []Attribute{
				word("dc", "which side of the DC system is grounded", "negative", "positive", "floating"),
				count("dc_bonds", 0, 20, "connections between the DC system and ground"),
				count("neutral_bonds", 0, 20, "connections between the AC neutral and ground"),
				yesNo("frames_bonded", "panel frames and metal cases are bonded"),
				yesNo("ground_fault_protection", "a DC ground-fault protection is fitted"),
				yesNo("surge_protection", "surge protection is fitted"),
			},
		},
		{
			Name: "reading", Labeled: true, Top: true, Declares: true,
			Means: "a measurement made on site",
			Attributes: []Attribute{
				text("title", "what was measured, in words"),
				word("of", "a subject and what was measured on it: string.ARRAY.NAME.voc (voc, isc, vmp, imp, power, voltage, current); of one parallel string of batteries bank.NAME.each.voltage").required(),
				within("value", "V", -10000, 1e6, "the value that the meter showed").accepts("A", "W"),
				{Name: "taken", Form: Date, Means: "day of the measurement"},
				within("cell_temperature", "degC", -60, 120, "temperature of the cells at that moment"),
				within("irradiance", "W/m2", 0, 1600, "irradiance in the plane of the array at that moment"),
			},
		},
		{
			Name: "waiver", Labeled: true, Top: true,
			Means: "a written permission to depart from one rule",
			Attributes: []Attribute{
				Attribute{Name: "on", Form: TextList, Means: "the subjects, as the rule's verdicts name them"}.required(),
				text("reason", "why it is permitted").required(),
				text("approved_by", "who permitted it"),
				Attribute{Name: "expires", Form: Date, Means: "the last day on which it holds"}.required(),
			},
		},
		{
			Name: "declared", Labeled: true,
			Means: "answers to what a codebook asks about the block that it stands in; its label names the codebook",
		},
	}
}
