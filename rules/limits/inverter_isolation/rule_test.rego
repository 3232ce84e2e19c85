package codebooks.limits.inverter_isolation_test

import data.codebooks.limits.inverter_isolation

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"inverter.sedge-1500.isolated": true}, "about": "ac_output.cabin", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"inverter.sedge-1500.isolated": false}, "about": "ac_output.cabin", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"inverter.sedge-1500.isolated": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"floating bank": {"design": "meets", "facts": {"grounding.dc_bonds": 0}, "about": "ac_output.cabin", "verdict": "does_not_apply"},
	"floating neutral": {"design": "meets", "facts": {"grounding.neutral_bonds": 0}, "about": "ac_output.cabin", "verdict": "does_not_apply"},
	"unknown grounding.dc_bonds": {"design": "meets", "facts": {"grounding.dc_bonds": null}, "about": "ac_output.cabin", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, inverter_isolation.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
