package codebooks.limits.converter_input_min_test

import data.codebooks.limits.converter_input_min

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": "18 V"}, "about": "supply.twelve", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": "18.0018 V"}, "about": "supply.twelve", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": "17.9982 V"}, "about": "supply.twelve", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.low_voltage_disconnect": null}, "about": "supply.twelve", "verdict": "unproven"},
	"unknown converter.rush-20.input_min": {"design": "meets", "facts": {"converter.rush-20.input_min": null}, "about": "supply.twelve", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, converter_input_min.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
