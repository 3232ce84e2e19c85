package codebooks.limits.neutral_bond_test

import data.codebooks.limits.neutral_bond

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"one": {"design": "meets", "facts": {}, "about": "grounding", "verdict": "meets"},
	"none": {"design": "meets", "facts": {"grounding.neutral_bonds": 0}, "about": "grounding", "verdict": "breaks"},
	"two": {"design": "meets", "facts": {"grounding.neutral_bonds": 2}, "about": "grounding", "verdict": "breaks"},
	"unknown grounding.neutral_bonds": {"design": "meets", "facts": {"grounding.neutral_bonds": null}, "about": "grounding", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, neutral_bond.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Without an inverter there is no neutral.
test_no_inverter if {
	system := test.facts("meets")
	without := object.union(system, {"ac_outputs": []})
	verdicts := test.verdicts(without, neutral_bond.check, {}) with input as without
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "grounding"]
}
