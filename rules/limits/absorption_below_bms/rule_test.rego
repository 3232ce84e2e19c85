package codebooks.limits.absorption_below_bms_test

import data.codebooks.limits.absorption_below_bms

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charger.main.absorption_per_battery": "29.2 V"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.absorption_per_battery": "29.19708 V"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charger.main.absorption_per_battery": "29.20292 V"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.absorption_per_battery": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown battery.peat-100.bms.over_voltage": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": null}, "about": "charger.main", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, absorption_below_bms.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
