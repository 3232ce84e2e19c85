package codebooks.practice.oversizing_test

import data.codebooks.practice.oversizing

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charger.main.overpanel": "140 %"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.overpanel": "139.98 %"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charger.main.overpanel": "140.02 %"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.overpanel": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown rating": {"design": "meets", "facts": {"controller.reed-70.charge_current_max": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, oversizing.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
