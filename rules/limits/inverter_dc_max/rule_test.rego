package codebooks.limits.inverter_dc_max_test

import data.codebooks.limits.inverter_dc_max

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.voltage_max": "33 V"}, "about": "ac_output.cabin", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.voltage_max": "32.9967 V"}, "about": "ac_output.cabin", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.voltage_max": "33.0033 V"}, "about": "ac_output.cabin", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.voltage_max": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"unknown inverter.sedge-1500.dc_max": {"design": "meets", "facts": {"inverter.sedge-1500.dc_max": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"unknown charge_source.engine.charge_voltage": {"design": "meets", "facts": {"charge_source.engine.charge_voltage": null}, "about": "ac_output.cabin", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, inverter_dc_max.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
