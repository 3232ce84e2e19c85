package lint_test

// What the deletion over examples leaves unnoticed, each with its reason.

// instead names, for an attribute that stands in for a better one, the better
// one: it is what a verdict asks for where neither is given.
var instead = map[string]string{
	"load.daily_energy":           "hours_per_day",
	"panel.nmot":                  "noct",
	"battery.internal_resistance": "short_circuit_current",
}

// byCode are the attributes that only a code's codebook judges. In an example that
// names no code nothing notices that they are gone; where one does, something must.
var byCode = []string{
	"cable.insulation", "cable_run.above_roof", "cable_run.ambient", "cable_run.cores", "cable_run.grouped", "cable_run.indoors", "cable_run.insulation",
	"cable_run.method", "cable_run.terminal_temperature", "disconnect.poles", "fuse.class", "grounding.ground_fault_protection", "site.place",
}

// unnoticed are the attributes whose absence no verdict notices somewhere in the
// examples, each with the reason. Those that wait for a later reader are in
// testdata/waiting.json.
var unnoticed = map[string]string{
	"battery.capacity_rate":            "bank.run_time reads it, which no rule judges",
	"battery.peukert":                  "bank.run_time reads it, which no rule judges",
	"battery.charge_above":             "of a lead battery: it is charged in any cold that it stands in",
	"battery.heater":                   "of a bank that never gets too cold to be charged",
	"bms.cold_charge_cutoff":           "of a bank that never gets too cold to be charged",
	"breaker.poles":                    "of a bank that is grounded at one pole",
	"breaker.continuous_rated":         "a device whose rating has the margin for hours at full current without it",
	"breaker.distance":                 "of a device on the PV side, where the panels limit the current",
	"cable.strand":                     "its stand-in is the documented default, which the part states too",
	"cable.tinned":                     "its stand-in is the documented default, which the part states too",
	"charge_source.cold_charge_cutoff": "of a bank that never gets too cold to be charged",
	"charger.over_bank":                "above a bank that gives off no gas",
	"controller.derate":                "of a controller in air that is cool enough for its full current",
	"controller.parallel_max":          "of a controller that is alone on its bank",
	"controller.survives_bank_loss":    "on a bank without a management system that could switch it off",
	"controller.wakes_empty_bank":      "on a bank without a management system that could switch it off",
	"design.codebooks":                 "a design that names no code is judged by fewer rules",
	"design.revision":                  "of the drawing's head: no rule judges it",
	"fuse.continuous_rated":            "a device whose rating has the margin for hours at full current without it",
	"fuse.interrupts":                  "behind a controller's load terminals, which limit the current themselves",
	"grounding.neutral_bonds":          "of a system without an ac_output",
	"waiver.approved_by":               "for people: no rule judges it",
	"fuse.distance":                    "of a device that does not stand at the bank",
	"inverter.ac_voltage":              "of an inverter whose loads have no run of their own in the design",
	"load.surge":                       "of a load behind a converter, or beside another that takes more at the start",
	"settings.bank_temperature_sensor": "of a bank that never gets too cold, and whose set-points do not follow its temperature",
	"settings.cold_charge_cutoff":      "of a bank that never gets too cold to be charged",
	"cable_run.engine_space":           codeBooks,
	"cable_run.sheathed":               codeBooks,
	"grounding.surge_protection":       codeBooks,
}

// codeBooks is why what only the code books read goes unnoticed.
const codeBooks = "of an example that no code book is in force for: iec, marine or vehicle would notice"
