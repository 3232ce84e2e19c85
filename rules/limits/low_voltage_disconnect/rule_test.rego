package codebooks.limits.low_voltage_disconnect_test

import data.codebooks.limits.low_voltage_disconnect

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": "22 V"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": "22.0022 V"}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": "21.9978 V"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown battery.peat-100.discharge_voltage_min": {"design": "meets", "facts": {"battery.peat-100.discharge_voltage_min": null}, "about": "bank.house", "verdict": "unproven"},
	"two batteries in series": {"design": "meets", "facts": {"bank.house.series": 2}, "about": "bank.house", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, low_voltage_disconnect.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
