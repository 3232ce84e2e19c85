package codebooks.us_2023.ground_fault_test

import data.codebooks.us_2023.ground_fault

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"without": {"design": "meets", "facts": {"grounding.ground_fault_protection": false}, "about": "grounding", "verdict": "breaks"},
	"without, 30 V and 6.4 A: exactly 8.0 A": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "string.south.a.voc_cold": "30 V", "pv_input.main.1.isc_stc": "6.4 A"}, "about": "grounding", "verdict": "does_not_apply"},
	"without, 30 V and 6.5 A": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "string.south.a.voc_cold": "30 V", "pv_input.main.1.isc_stc": "6.5 A"}, "about": "grounding", "verdict": "breaks"},
	"without, 30 V and 6.45 A": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "string.south.a.voc_cold": "30 V", "pv_input.main.1.isc_stc": "6.45 A"}, "about": "grounding", "verdict": "breaks"},
	"without, 30.1 V and 6.4 A": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "string.south.a.voc_cold": "30.1 V", "pv_input.main.1.isc_stc": "6.4 A"}, "about": "grounding", "verdict": "breaks"},
	"two strings, solidly grounded, off buildings, and into one": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "pv_input.main.1.parallel_strings": 2, "array.south.mounting": "open_rack", "array.south.declared.us_2023.on_building": false}, "about": "grounding", "verdict": "breaks"},
	"two strings, solidly grounded, off buildings, whether into one unknown": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "pv_input.main.1.parallel_strings": 2, "array.south.mounting": "open_rack", "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": null}, "about": "grounding", "verdict": "unproven"},
	"two strings, solidly grounded, off buildings": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "pv_input.main.1.parallel_strings": 2, "array.south.mounting": "open_rack", "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false}, "about": "grounding", "verdict": "meets"},
	"three strings": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "array.south.mounting": "open_rack", "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false}, "about": "grounding", "verdict": "breaks"},
	"two strings, floating": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "grounding.dc": "floating", "pv_input.main.1.parallel_strings": 2, "array.south.mounting": "open_rack", "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false}, "about": "grounding", "verdict": "breaks"},
	"two strings on a building, and not into it": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "pv_input.main.1.parallel_strings": 2, "cable_run.array.south.indoors": false}, "about": "grounding", "verdict": "breaks"},
	"two strings on a building": {"design": "meets", "facts": {"grounding.ground_fault_protection": false, "pv_input.main.1.parallel_strings": 2}, "about": "grounding", "verdict": "breaks"},
	"unknown grounding.ground_fault_protection": {"design": "meets", "facts": {"grounding.ground_fault_protection": null}, "about": "grounding", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "grounding", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, ground_fault.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
