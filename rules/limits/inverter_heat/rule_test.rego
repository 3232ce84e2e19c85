package codebooks.limits.inverter_heat_test

import data.codebooks.limits.inverter_heat

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"site.hottest": "40 degC"}, "about": "ac_output.cabin", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"site.hottest": "39.9 degC"}, "about": "ac_output.cabin", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"site.hottest": "40.1 degC"}, "about": "ac_output.cabin", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"site.hottest": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"unknown inverter.sedge-1500.full_power_to": {"design": "meets", "facts": {"inverter.sedge-1500.full_power_to": null}, "about": "ac_output.cabin", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, inverter_heat.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
