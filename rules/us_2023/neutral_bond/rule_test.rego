package codebooks.us_2023.neutral_bond_test

import data.codebooks.us_2023.neutral_bond

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"one": {"design": "meets", "facts": {}, "about": "grounding", "verdict": "meets"},
	"none": {"design": "meets", "facts": {"grounding.neutral_bonds": 0}, "about": "grounding", "verdict": "breaks"},
	"two": {"design": "meets", "facts": {"grounding.neutral_bonds": 2}, "about": "grounding", "verdict": "breaks"},
	"unknown grounding.neutral_bonds": {"design": "meets", "facts": {"grounding.neutral_bonds": null}, "about": "grounding", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "grounding", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, neutral_bond.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Without an AC output there is no neutral.
test_no_ac_output if {
	system := test.facts("meets")
	direct := object.union(system, {"ac_outputs": []})
	verdicts := test.verdicts(direct, neutral_bond.check, {"grounding.neutral_bonds": 0}) with input as direct
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "grounding"]
	count(neutral_bond.check) == 1 with input as direct
}
