package codebooks.practice.system_voltage_test

import data.codebooks.practice.system_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"ac_output.cabin.current_operating": "130 A"}, "about": "ac_output.cabin", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"ac_output.cabin.current_operating": "129.98 A"}, "about": "ac_output.cabin", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"ac_output.cabin.current_operating": "130.02 A"}, "about": "ac_output.cabin", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"ac_output.cabin.current_operating": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"unknown power": {"design": "meets", "facts": {"inverter.sedge-1500.continuous": null}, "about": "ac_output.cabin", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, system_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
