package codebooks.limits.converter_input_max_test

import data.codebooks.limits.converter_input_max

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.voltage_max": "35 V"}, "about": "supply.twelve", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.voltage_max": "34.9965 V"}, "about": "supply.twelve", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.voltage_max": "35.0035 V"}, "about": "supply.twelve", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.voltage_max": null}, "about": "supply.twelve", "verdict": "unproven"},
	"unknown converter.rush-20.input_max": {"design": "meets", "facts": {"converter.rush-20.input_max": null}, "about": "supply.twelve", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, converter_input_max.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
