package codebooks.practice.charge_rate_test

import data.codebooks.practice.charge_rate

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the most": {"design": "meets", "facts": {"bank.house.charge_rate": "13 %"}, "about": "bank.house", "verdict": "meets"},
	"exactly at the least": {"design": "meets", "facts": {"bank.house.charge_rate": "5 %"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.charge_rate": "13.001 %"}, "about": "bank.house", "verdict": "breaks"},
	"a step below": {"design": "meets", "facts": {"bank.house.charge_rate": "4.999 %"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.charge_rate": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown chemistry": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "bank.house", "verdict": "unproven"},
	"lithium": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, charge_rate.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
