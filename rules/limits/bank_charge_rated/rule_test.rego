package codebooks.limits.bank_charge_rated_test

import data.codebooks.limits.bank_charge_rated

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.charge_current_rated": "180 A"}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.charge_current_rated": "179.982 A"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.charge_current_rated": "180.018 A"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.charge_current_rated": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown controller.reed-70.charge_current_max": {"design": "meets", "facts": {"controller.reed-70.charge_current_max": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_charge_rated.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
