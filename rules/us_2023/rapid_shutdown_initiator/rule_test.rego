package codebooks.us_2023.rapid_shutdown_initiator_test

import data.codebooks.us_2023.rapid_shutdown_initiator

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"on the ground": {"design": "meets", "facts": {"array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "array.south.mounting": "open_rack", "array.south.declared.us_2023.initiator_outside": false}, "about": "array.south", "verdict": "does_not_apply"},
	"a structure for PV alone": {"design": "meets", "facts": {"site.declared.us_2023.structure": "pv_only", "array.south.declared.us_2023.initiator_outside": false}, "about": "array.south", "verdict": "does_not_apply"},
	"on the ground, and into the house": {"design": "meets", "facts": {"array.south.declared.us_2023.on_building": false, "array.south.mounting": "open_rack", "array.south.declared.us_2023.initiator_outside": false}, "about": "array.south", "verdict": "breaks"},
	"inside": {"design": "meets", "facts": {"array.south.declared.us_2023.initiator_outside": false}, "about": "array.south", "verdict": "breaks"},
	"outside": {"design": "meets", "facts": {}, "about": "array.south", "verdict": "meets"},
	"no dwelling": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "other"}, "about": "array.south", "verdict": "does_not_apply"},
	"unknown array.south.declared.us_2023.initiator_outside": {"design": "meets", "facts": {"array.south.declared.us_2023.initiator_outside": null}, "about": "array.south", "verdict": "unproven"},
	"unknown site.declared.us_2023.occupancy": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": null}, "about": "array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, rapid_shutdown_initiator.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
