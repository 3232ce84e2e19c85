package codebooks.limits.low_voltage_above_bms_test

import data.codebooks.limits.low_voltage_above_bms

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": "20 V"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": "20.002 V"}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": "19.998 V"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown battery.peat-100.bms.under_voltage": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": null}, "about": "bank.house", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "bank.house", "verdict": "does_not_apply"},
	"two batteries in series": {"design": "meets", "facts": {"bank.house.series": 2}, "about": "bank.house", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, low_voltage_above_bms.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
