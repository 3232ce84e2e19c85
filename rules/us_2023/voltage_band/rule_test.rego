package codebooks.us_2023.voltage_band_test

import data.codebooks.us_2023.voltage_band

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"dwelling: exactly at the limit": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "string.south.a.voc_cold": "600 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"dwelling: a step below": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "string.south.a.voc_cold": "599.94 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"dwelling: a step above": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "string.south.a.voc_cold": "600.06 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"other building: exactly at the limit": {"design": "meets", "facts": {"string.south.a.voc_cold": "1000 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"other building: a step below": {"design": "meets", "facts": {"string.south.a.voc_cold": "999.9 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"other building: a step above": {"design": "meets", "facts": {"string.south.a.voc_cold": "1000.1 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"600 V needs no word on the building": {"design": "meets", "facts": {"string.south.a.voc_cold": "600 V", "site.declared.us_2023.occupancy": null}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step above 600 V does": {"design": "meets", "facts": {"string.south.a.voc_cold": "600.06 V", "site.declared.us_2023.occupancy": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown string.south.a.voc_cold": {"design": "meets", "facts": {"string.south.a.voc_cold": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "pv_input.main.1", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, voltage_band.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
