package codebooks.us_2023.rapid_shutdown_test

import data.codebooks.us_2023.rapid_shutdown

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"outside: exactly at the limit": {"design": "meets", "facts": {"array.south.declared.us_2023.shutdown_voltage_outside": "30 V"}, "about": "array.south", "which": "outside", "verdict": "meets"},
	"outside: a step below": {"design": "meets", "facts": {"array.south.declared.us_2023.shutdown_voltage_outside": "29.997 V"}, "about": "array.south", "which": "outside", "verdict": "meets"},
	"outside: a step above": {"design": "meets", "facts": {"array.south.declared.us_2023.shutdown_voltage_outside": "30.003 V"}, "about": "array.south", "which": "outside", "verdict": "breaks"},
	"inside: exactly at the limit": {"design": "meets", "facts": {"array.south.declared.us_2023.shutdown_voltage_inside": "80 V"}, "about": "array.south", "which": "inside", "verdict": "meets"},
	"inside: a step below": {"design": "meets", "facts": {"array.south.declared.us_2023.shutdown_voltage_inside": "79.992 V"}, "about": "array.south", "which": "inside", "verdict": "meets"},
	"inside: a step above": {"design": "meets", "facts": {"array.south.declared.us_2023.shutdown_voltage_inside": "80.008 V"}, "about": "array.south", "which": "inside", "verdict": "breaks"},
	"no function": {"design": "meets", "facts": {"array.south.declared.us_2023.rapid_shutdown": false}, "about": "array.south", "which": "function", "verdict": "breaks"},
	"30 V by itself": {"design": "meets", "facts": {"string.south.a.voc_cold": "30 V", "array.south.declared.us_2023.shutdown_voltage_outside": null}, "about": "array.south", "which": "outside", "verdict": "does_not_apply"},
	"30.1 V by itself": {"design": "meets", "facts": {"string.south.a.voc_cold": "30.1 V", "array.south.declared.us_2023.shutdown_voltage_outside": null}, "about": "array.south", "which": "outside", "verdict": "unproven"},
	"80 V by itself": {"design": "meets", "facts": {"string.south.a.voc_cold": "80 V", "array.south.declared.us_2023.shutdown_voltage_inside": null}, "about": "array.south", "which": "inside", "verdict": "does_not_apply"},
	"80.1 V by itself": {"design": "meets", "facts": {"string.south.a.voc_cold": "80.1 V", "array.south.declared.us_2023.shutdown_voltage_inside": null}, "about": "array.south", "which": "inside", "verdict": "unproven"},
	"on a roof, nothing inside": {"design": "meets", "facts": {"cable_run.array.south.indoors": false, "array.south.declared.us_2023.on_building": false, "array.south.declared.us_2023.rapid_shutdown": false}, "about": "array.south", "which": "function", "verdict": "breaks"},
	"on a building as the design says, nothing inside": {"design": "meets", "facts": {"cable_run.array.south.indoors": false, "array.south.mounting": "open_rack", "array.south.declared.us_2023.rapid_shutdown": false}, "about": "array.south", "which": "function", "verdict": "breaks"},
	"hazard control": {"design": "meets", "facts": {"array.south.declared.us_2023.hazard_control": true, "array.south.declared.us_2023.shutdown_voltage_inside": null}, "about": "array.south", "which": "inside", "verdict": "does_not_apply"},
	"on the ground, and into the building, silent": {"design": "meets", "facts": {"array.south.declared.us_2023.on_building": false, "array.south.mounting": "open_rack", "array.south.declared.us_2023.rapid_shutdown": null}, "about": "array.south", "which": "function", "verdict": "unproven"},
	"on the ground, and into the building, without": {"design": "meets", "facts": {"array.south.declared.us_2023.on_building": false, "array.south.mounting": "open_rack", "array.south.declared.us_2023.rapid_shutdown": false}, "about": "array.south", "which": "function", "verdict": "breaks"},
	"on the ground, whether into a building unknown": {"design": "meets", "facts": {"array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": null, "array.south.mounting": "open_rack", "array.south.declared.us_2023.rapid_shutdown": null}, "about": "array.south", "which": "function", "verdict": "unproven"},
	"on the ground, a string into the building": {"design": "meets", "facts": {"array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "cable_run.string.south.a.indoors": true, "array.south.mounting": "open_rack", "array.south.declared.us_2023.rapid_shutdown": false}, "about": "array.south", "which": "function", "verdict": "breaks"},
	"beside a vehicle, and into it": {"design": "meets", "facts": {"array.south.declared.us_2023.on_building": false, "site.place": "vehicle", "array.south.mounting": "open_rack", "array.south.declared.us_2023.rapid_shutdown": null}, "about": "array.south", "which": "function", "verdict": "does_not_apply"},
	"on the ground": {"design": "meets", "facts": {"array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "array.south.mounting": "open_rack", "array.south.declared.us_2023.rapid_shutdown": null}, "about": "array.south", "which": "function", "verdict": "does_not_apply"},
	"on the ground, outside": {"design": "meets", "facts": {"array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "array.south.mounting": "open_rack", "array.south.declared.us_2023.shutdown_voltage_outside": "90 V"}, "about": "array.south", "which": "outside", "verdict": "does_not_apply"},
	"on the ground, inside": {"design": "meets", "facts": {"array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "array.south.mounting": "open_rack", "array.south.declared.us_2023.shutdown_voltage_inside": "90 V"}, "about": "array.south", "which": "inside", "verdict": "does_not_apply"},
	"a structure for PV alone": {"design": "meets", "facts": {"site.declared.us_2023.structure": "pv_only"}, "about": "array.south", "which": "function", "verdict": "does_not_apply"},
	"an open detached structure, and into the building": {"design": "meets", "facts": {"site.declared.us_2023.structure": "open_detached", "array.south.declared.us_2023.rapid_shutdown": false}, "about": "array.south", "which": "function", "verdict": "breaks"},
	"an open detached structure": {"design": "meets", "facts": {"site.declared.us_2023.structure": "open_detached", "cable_run.array.south.indoors": false}, "about": "array.south", "which": "function", "verdict": "does_not_apply"},
	"unknown array.south.declared.us_2023.rapid_shutdown": {"design": "meets", "facts": {"array.south.declared.us_2023.rapid_shutdown": null}, "about": "array.south", "which": "function", "verdict": "unproven"},
	"unknown site.declared.us_2023.structure": {"design": "meets", "facts": {"site.declared.us_2023.structure": null}, "about": "array.south", "which": "function", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "array.south", "which": "function", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, rapid_shutdown.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
