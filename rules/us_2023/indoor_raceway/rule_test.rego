package codebooks.us_2023.indoor_raceway_test

import data.codebooks.us_2023.indoor_raceway

# 690.31(D) (public transcription of 2020): 30 V or 8 A, either triggers; an Isc of 6.4 A is exactly
# 8.0 A.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"not metal": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.raceway": "nonmetallic"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"metal-clad cable": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.raceway": "mc_cable"}, "about": "cable_run.array.south", "verdict": "meets"},
	"30 V and 6.4 A: exactly 8.0 A": {"design": "meets", "facts": {"string.south.a.voc_cold": "30 V", "cable_run.array.south.current": "6.4 A", "cable_run.array.south.declared.us_2023.raceway": "none"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"30 V and 6.5 A": {"design": "meets", "facts": {"string.south.a.voc_cold": "30 V", "cable_run.array.south.current": "6.5 A", "cable_run.array.south.declared.us_2023.raceway": "none"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"30 V and 6.45 A": {"design": "meets", "facts": {"string.south.a.voc_cold": "30 V", "cable_run.array.south.current": "6.45 A", "cable_run.array.south.declared.us_2023.raceway": "none"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"30.1 V and 6.4 A": {"design": "meets", "facts": {"string.south.a.voc_cold": "30.1 V", "cable_run.array.south.current": "6.4 A", "cable_run.array.south.declared.us_2023.raceway": "none"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"hazard control": {"design": "meets", "facts": {"array.south.declared.us_2023.hazard_control": true, "cable_run.array.south.declared.us_2023.raceway": "none"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"outdoors": {"design": "meets", "facts": {}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"unknown cable_run.array.south.declared.us_2023.raceway": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.raceway": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.indoors": {"design": "meets", "facts": {"cable_run.array.south.indoors": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, indoor_raceway.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
