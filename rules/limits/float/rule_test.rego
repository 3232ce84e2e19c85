package codebooks.limits.float_test

import data.codebooks.limits.float

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"charger.main.float_per_battery": "26.6 V"}, "about": "charger.main", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"charger.main.float_per_battery": "27.2 V"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.float_per_battery": "26.5994 V"}, "about": "charger.main", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"charger.main.float_per_battery": "27.2006 V"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.float_per_battery": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown battery.peat-100.float_min": {"design": "meets", "facts": {"battery.peat-100.float_min": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown battery.peat-100.float_max": {"design": "meets", "facts": {"battery.peat-100.float_max": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, float.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
