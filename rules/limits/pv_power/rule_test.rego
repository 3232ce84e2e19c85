package codebooks.limits.pv_power_test

import data.codebooks.limits.pv_power

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charger.main.pv_power": "2200 W"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.pv_power": "2199.78 W"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charger.main.pv_power": "2200.22 W"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.pv_power": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown charger.main.pv_power_limit": {"design": "meets", "facts": {"charger.main.pv_power_limit": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown panel.fen-200.pmax": {"design": "meets", "facts": {"panel.fen-200.pmax": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, pv_power.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
