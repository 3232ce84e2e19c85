package codebooks.limits.inverter_load_test

import data.codebooks.limits.inverter_load

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"running: exactly at the limit": {"design": "meets", "facts": {"ac_output.cabin.load_power": "1500 W"}, "about": "ac_output.cabin", "which": "running", "verdict": "meets"},
	"running: a step below": {"design": "meets", "facts": {"ac_output.cabin.load_power": "1499.85 W"}, "about": "ac_output.cabin", "which": "running", "verdict": "meets"},
	"running: a step above": {"design": "meets", "facts": {"ac_output.cabin.load_power": "1500.15 W"}, "about": "ac_output.cabin", "which": "running", "verdict": "breaks"},
	"running: unknown": {"design": "meets", "facts": {"ac_output.cabin.load_power": null}, "about": "ac_output.cabin", "which": "running", "verdict": "unproven"},
	"starting: exactly at the limit": {"design": "meets", "facts": {"ac_output.cabin.load_peak": "3000 W"}, "about": "ac_output.cabin", "which": "as the heaviest starts", "verdict": "meets"},
	"starting: a step below": {"design": "meets", "facts": {"ac_output.cabin.load_peak": "2999.7 W"}, "about": "ac_output.cabin", "which": "as the heaviest starts", "verdict": "meets"},
	"starting: a step above": {"design": "meets", "facts": {"ac_output.cabin.load_peak": "3000.3 W"}, "about": "ac_output.cabin", "which": "as the heaviest starts", "verdict": "breaks"},
	"starting: unknown": {"design": "meets", "facts": {"ac_output.cabin.load_peak": null}, "about": "ac_output.cabin", "which": "as the heaviest starts", "verdict": "unproven"},
	"unknown inverter.sedge-1500.continuous": {"design": "meets", "facts": {"inverter.sedge-1500.continuous": null}, "about": "ac_output.cabin", "which": "running", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, inverter_load.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
