package codebooks.practice.surge_protection_test

import data.codebooks.practice.surge_protection

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"fitted": {"design": "meets", "facts": {}, "about": "grounding", "verdict": "meets"},
	"not fitted": {"design": "meets", "facts": {"grounding.surge_protection": false}, "about": "grounding", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"grounding.surge_protection": null}, "about": "grounding", "verdict": "unproven"},
	"on the ground": {"design": "meets", "facts": {"grounding.surge_protection": false, "site.place": "ground"}, "about": "grounding", "verdict": "breaks"},
	"on a vehicle": {"design": "meets", "facts": {"grounding.surge_protection": false, "site.place": "vehicle"}, "about": "grounding", "verdict": "does_not_apply"},
	"on a boat": {"design": "meets", "facts": {"grounding.surge_protection": false, "site.place": "boat"}, "about": "grounding", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, surge_protection.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Without an array there is nothing to protect.
test_no_array if {
	system := object.union(test.facts("meets"), {"arrays": []})
	verdicts := test.verdicts(system, surge_protection.check, {"grounding.surge_protection": false}) with input as system
	["does_not_apply"] == [v.verdict | some v in verdicts]
}

test_one_answer if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, surge_protection.check, {}) with input as system
	["meets"] == [v.verdict | some v in verdicts]
}
