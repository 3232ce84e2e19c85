package codebooks.limits.absorption_floor_test

import data.codebooks.limits.absorption_floor

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charger.main.absorption_per_battery": "28 V"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charger.main.absorption_per_battery": "28.0028 V"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.absorption_per_battery": "27.9972 V"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.absorption_per_battery": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown battery.peat-100.absorption_min": {"design": "meets", "facts": {"battery.peat-100.absorption_min": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, absorption_floor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
