package design

// Data sheets. Terms are those of EN 50380, IEC 61215 and IEC 62109.

var chemistries = []string{"flooded", "agm", "gel", "lifepo4", "nmc", "sodium_ion"}

func partKinds() []*Kind {
	return []*Kind{
		{
			Name: "panel", Part: true, Labeled: true, Top: true, Declares: true,
			Means: "a panel's data sheet, at standard test conditions",
			Attributes: []Attribute{
				above("pmax", "W", 0, 2000, "power at the maximum power point"),
				above("voc", "V", 0, 200, "open-circuit voltage"),
				above("isc", "A", 0, 60, "short-circuit current"),
				above("vmp", "V", 0, 200, "voltage at the maximum power point"),
				above("imp", "A", 0, 60, "current at the maximum power point"),
				within("temp_voc", "%/K", -2, 1, "change of the open-circuit voltage with cell temperature").accepts("V/K"),
				within("temp_isc", "%/K", -1, 1, "change of the short-circuit current with cell temperature").accepts("A/K"),
				within("temp_pmax", "%/K", -2, 1, "change of the maximum power with cell temperature").accepts("W/K"),
				within("noct", "degC", 20, 90, "nominal operating cell temperature (open circuit)"),
				within("nmot", "degC", 20, 90, "nominal module operating temperature (at the maximum power point)"),
				count("cells", 1, 600, "cells in series; half-cut cells as they are wired"),
				word("technology", "kind of cell", "mono_si", "poly_si", "thin_film"),
				within("tolerance", "%", 0, 20, "tolerance of the ratings, plus or minus"),
				above("isc_bifacial", "A", 0, 60, "short-circuit current with light from behind"),
				above("max_system_voltage", "V", 0, 2000, "largest voltage of the system that it may stand in"),
				above("max_series_fuse", "A", 0, 100, "largest fuse in series with it"),
				count("bypass_diodes", 0, 100, "bypass diodes"),
				word("connector", "make and type of its plugs"),
				above("length", "m", 0, 5, "length of the frame"),
				above("width", "m", 0, 5, "width of the frame"),
				above("mass", "kg", 0, 100, "mass"),
			},
		},
		{
			Name: "controller", Part: true, Labeled: true, Top: true, Declares: true,
			Means:      "a charge controller's data sheet",
			Attributes: controllerAttributes(),
		},
		{
			Name: "battery", Part: true, Labeled: true, Top: true, Declares: true,
			Blocks:     []string{"bms"},
			Means:      "a battery's data sheet; voltages are those of the whole battery at 25 degC",
			Attributes: batteryAttributes(),
		},
		{
			Name: "bms", Single: true,
			Means: "the battery's own management system",
			Attributes: []Attribute{
				above("charge_cutoff", "A", 0, 5000, "charge current at which it opens"),
				above("discharge_cutoff", "A", 0, 10000, "discharge current at which it opens"),
				above("over_voltage", "V", 0, 1000, "voltage of the whole battery above which it opens"),
				above("under_voltage", "V", 0, 1000, "voltage of the whole battery below which it opens"),
				within("cold_charge_cutoff", "degC", -60, 40, "cell temperature below which it stops charging"),
				yesNo("precharge", "has a pre-charge circuit for the inrush of inverters"),
			},
		},
		{
			Name: "inverter", Part: true, Labeled: true, Top: true, Declares: true,
			Means: "an inverter's data sheet",
			Attributes: []Attribute{
				above("dc_min", "V", 0, 1000, "lowest DC voltage that it works at"),
				above("dc_max", "V", 0, 1000, "highest DC voltage that it bears"),
				above("continuous", "W", 0, 1e5, "power that it gives for ever"),
				above("surge", "W", 0, 3e5, "power that it gives for a short time"),
				above("surge_time", "s", 0, 3600, "for how long it gives that"),
				above("efficiency", "%", 0, 100, "output over input"),
				within("idle", "W", 0, 1000, "power that it takes without load"),
				yesNo("isolated", "its AC side is isolated from its DC side"),
				within("charge_current_max", "A", 0, 1000, "charge current of an inverter-charger"),
				within("full_power_to", "degC", -20, 90, "hottest air at which it gives full power"),
				above("ac_voltage", "V", 0, 500, "AC output voltage"),
			},
		},
		{
			Name: "converter", Part: true, Labeled: true, Top: true, Declares: true,
			Means: "the data sheet of a converter from one DC voltage to another",
			Attributes: []Attribute{
				above("input_min", "V", 0, 1000, "lowest input voltage"),
				above("input_max", "V", 0, 1000, "highest input voltage"),
				above("output", "V", 0, 1000, "output voltage"),
				above("current", "A", 0, 1000, "output current that it gives for ever"),
				above("efficiency", "%", 0, 100, "output over input"),
				within("idle", "W", 0, 1000, "power that it takes without load"),
				yesNo("isolated", "its output is isolated from its input"),
			},
		},
		{
			Name: "cable", Part: true, Labeled: true, Top: true,
			Means:      "a cable's data sheet",
			Attributes: cableAttributes(false),
		},
	}
}

func controllerAttributes() []Attribute {
	return []Attribute{
		word("kind", "how it couples the array to the bank", "mppt", "pwm"),
		above("pv_voltage_max", "V", 0, 1500, "highest PV voltage, absolute: above it the controller is destroyed"),
		above("pv_voltage_max_25", "V", 0, 1500, "highest PV voltage where the maker states it at 25 degC"),
		above("mppt_voltage_min", "V", 0, 1500, "lower end of the tracking window"),
		above("mppt_voltage_max", "V", 0, 1500, "upper end of the tracking window"),
		above("pv_short_circuit_max", "A", 0, 1000, "largest short-circuit current on one input; damage above it"),
		above("pv_current_max", "A", 0, 1000, "largest operating current on one input; clipped above it"),
		above("pv_power_max", "W", 0, 1e5, "largest PV power that it is made for"),
		within("pv_backfeed_max", "A", 0, 1000, "largest current that it can feed back into the array in a fault"),
		above("charge_current_max", "A", 0, 1000, "rated charge current"),
		above("bank_voltages", "V", 0, 1000, "bank voltages that it works with").asList(),
		within("start_above_bank", "V", 0, 100, "PV voltage above the bank's that it needs to start"),
		within("run_above_bank", "V", 0, 100, "PV voltage above the bank's that it needs to go on"),
		above("overpanel_max", "%", 0, 1000, "PV power that the maker allows, as a share of rated output"),
		above("efficiency", "%", 0, 100, "output over input"),
		within("idle", "W", 0, 200, "power that it takes itself"),
		within("full_power_to", "degC", -20, 90, "hottest air at which it gives its rated current"),
		within("derate", "%/K", 0, 20, "share of rated current lost with each kelvin above that, a positive figure"),
		above("altitude_max", "m", 0, 9000, "highest place that it is rated for"),
		within("clearance_min", "m", 0, 5, "clear air that it needs"),
		count("pv_inputs", 1, 32, "independent PV inputs").byDefault("1"),
		count("parallel_max", 1, 200, "how many may work on one bank"),
		word("common", "which pole PV and bank share inside", "negative", "positive"),
		yesNo("isolated", "PV and bank are isolated from each other"),
		within("load_current_max", "A", 0, 1000, "rated current of its load terminals"),
		within("compensation_min", "V/K", -0.010, 0, "steepest temperature compensation that can be set, per cell"),
		within("compensation_max", "V/K", -0.010, 0, "least temperature compensation that can be set, per cell"),
		yesNo("wakes_empty_bank", "can wake a bank whose management system has switched off"),
		yesNo("survives_bank_loss", "bears the loss of the bank under sun"),
	}
}

func batteryAttributes() []Attribute {
	return []Attribute{
		word("chemistry", "chemistry", chemistries...),
		above("nominal", "V", 0, 1000, "nominal voltage"),
		above("capacity", "Ah", 0, 20000, "capacity at its rated time of discharge"),
		above("capacity_rate", "h", 0, 240, "time of discharge that the capacity is rated at"),
		count("cells", 1, 400, "cells in series"),
		above("absorption_min", "V", 0, 1000, "lowest absorption voltage"),
		above("absorption_max", "V", 0, 1000, "highest absorption voltage"),
		above("float_min", "V", 0, 1000, "lowest float voltage"),
		above("float_max", "V", 0, 1000, "highest float voltage"),
		above("equalize_max", "V", 0, 1000, "highest equalizing voltage"),
		above("charge_current_max", "A", 0, 5000, "largest charge current"),
		above("discharge_current_max", "A", 0, 10000, "largest continuous discharge current"),
		above("discharge_voltage_min", "V", 0, 1000, "voltage below which it must not be discharged"),
		within("charge_above", "degC", -60, 60, "temperature above which it may be charged"),
		within("charge_below", "degC", -20, 120, "temperature below which it may be charged"),
		within("discharge_above", "degC", -60, 60, "temperature above which it may be discharged"),
		above("usable", "%", 0, 100, "share of the capacity that may be used"),
		above("round_trip", "%", 0, 100, "energy out over energy in"),
		number("peukert", 1, 2, "Peukert exponent"),
		above("short_circuit_current", "A", 0, 1e6, "prospective short-circuit current"),
		above("internal_resistance", "ohm", 0, 10, "internal resistance"),
		count("series_max", 1, 100, "how many may stand in series"),
		count("parallel_max", 1, 1000, "how many may stand in parallel"),
		yesNo("heater", "has a heater that warms it before charging"),
	}
}
