package codebooks.marine.one_bond_test

import data.codebooks.marine.one_bond

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"one": {"design": "meets", "facts": {}, "about": "grounding", "verdict": "meets"},
	"two": {"design": "meets", "facts": {"grounding.dc_bonds": 2}, "about": "grounding", "verdict": "breaks"},
	"none": {"design": "meets", "facts": {"grounding.dc_bonds": 0}, "about": "grounding", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"grounding.dc_bonds": null}, "about": "grounding", "verdict": "unproven"},
	"floating": {"design": "meets", "facts": {"grounding.dc": "floating", "grounding.dc_bonds": 0}, "about": "grounding", "verdict": "does_not_apply"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "grounding", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "grounding", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, one_bond.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
