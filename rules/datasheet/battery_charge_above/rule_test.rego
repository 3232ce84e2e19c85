package codebooks.datasheet.battery_charge_above_test

import data.codebooks.datasheet.battery_charge_above

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.charge_above": "0 degC"}, "about": "battery.peat-100", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"battery.peat-100.charge_above": "0.005 degC"}, "about": "battery.peat-100", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"battery.peat-100.charge_above": "-0.005 degC"}, "about": "battery.peat-100", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"battery.peat-100.charge_above": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.chemistry": {"design": "meets", "facts": {"battery.peat-100.chemistry": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded"}, "about": "battery.peat-100", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_charge_above.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
