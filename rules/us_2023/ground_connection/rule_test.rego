package codebooks.us_2023.ground_connection_test

import data.codebooks.us_2023.ground_connection

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"one": {"design": "meets", "facts": {}, "about": "grounding", "verdict": "meets"},
	"two": {"design": "meets", "facts": {"grounding.dc_bonds": 2}, "about": "grounding", "verdict": "breaks"},
	"none": {"design": "meets", "facts": {"grounding.dc_bonds": 0}, "about": "grounding", "verdict": "breaks"},
	"floating, none": {"design": "meets", "facts": {"grounding.dc": "floating", "grounding.dc_bonds": 0}, "about": "grounding", "verdict": "meets"},
	"floating, one": {"design": "meets", "facts": {"grounding.dc": "floating"}, "about": "grounding", "verdict": "breaks"},
	"unknown grounding.dc_bonds": {"design": "meets", "facts": {"grounding.dc_bonds": null}, "about": "grounding", "verdict": "unproven"},
	"unknown grounding.dc": {"design": "meets", "facts": {"grounding.dc": null}, "about": "grounding", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "grounding", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, ground_connection.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
