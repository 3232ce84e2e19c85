package codebooks.limits.absorption_ceiling_test

import data.codebooks.limits.absorption_ceiling

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charger.main.absorption_per_battery": "28.8 V"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.absorption_per_battery": "28.79712 V"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charger.main.absorption_per_battery": "28.80288 V"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.absorption_per_battery": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown battery.peat-100.absorption_max": {"design": "meets", "facts": {"battery.peat-100.absorption_max": null}, "about": "charger.main", "verdict": "unproven"},
	"14.4 V for a 12 V lead battery": {"design": "meets", "facts": {"charger.main.absorption_per_battery": "14.4 V", "battery.peat-100.absorption_max": "14.4 V"}, "about": "charger.main", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, absorption_ceiling.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
