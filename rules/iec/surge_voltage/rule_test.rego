package codebooks.iec.surge_voltage_test

import data.codebooks.iec.surge_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "150 V"}, "about": "array.south", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "149.85 V"}, "about": "array.south", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "150.15 V"}, "about": "array.south", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "array.south", "verdict": "unproven"},
	"silent": {"design": "meets", "facts": {"array.south.declared.iec.spd_ucpv": null}, "about": "array.south", "verdict": "unproven"},
	"whether it is fitted unknown": {"design": "meets", "facts": {"grounding.surge_protection": null}, "about": "array.south", "verdict": "unproven"},
	"none": {"design": "meets", "facts": {"grounding.surge_protection": false}, "about": "array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, surge_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
