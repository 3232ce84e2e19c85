package codebooks.limits.bank_charge_one_lost_test

import data.codebooks.limits.bank_charge_one_lost

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.charge_current_total": "120 A"}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.charge_current_total": "119.988 A"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.charge_current_total": "120.012 A"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.charge_current_total": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown bank.house.charge_current_accepted_one_lost": {"design": "meets", "facts": {"bank.house.charge_current_accepted_one_lost": null}, "about": "bank.house", "verdict": "unproven"},
	"one string": {"design": "meets", "facts": {"bank.house.parallel": 1}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_charge_one_lost.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
