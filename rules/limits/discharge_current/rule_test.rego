package codebooks.limits.discharge_current_test

import data.codebooks.limits.discharge_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.discharge_current_continuous": "300 A"}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.discharge_current_continuous": "299.97 A"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.discharge_current_continuous": "300.03 A"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.discharge_current_continuous": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown battery.peat-100.discharge_current_max": {"design": "meets", "facts": {"battery.peat-100.discharge_current_max": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown load.lights.power": {"design": "meets", "facts": {"load.lights.power": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, discharge_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
