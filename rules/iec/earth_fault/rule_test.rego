package codebooks.iec.earth_fault_test

import data.codebooks.iec.earth_fault

# Worked: two panels of 49.5 V are 2 x 54.18 V = 108.36 V at -10 degC and, by the factor 1.25 of
# the table for crystalline silicon, 123.75 V below -36 degC.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"fitted": {"design": "meets", "facts": {}, "about": "pv_input.main.1", "verdict": "meets"},
	"not fitted": {"design": "meets", "facts": {"grounding.ground_fault_protection": false}, "about": "pv_input.main.1", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"grounding.ground_fault_protection": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"exactly 120 V": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "120 V", "grounding.ground_fault_protection": false}, "about": "pv_input.main.1", "verdict": "does_not_apply"},
	"a step above 120 V": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "120.01 V", "grounding.ground_fault_protection": false}, "about": "pv_input.main.1", "verdict": "breaks"},
	"two panels of 49.5 V at -10 degC are 108.36 V": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "108.3555 V", "grounding.ground_fault_protection": false}, "about": "pv_input.main.1", "verdict": "does_not_apply"},
	"two panels of 49.5 V at -36 degC by factor 1.25 are 123.75 V": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "123.75 V", "grounding.ground_fault_protection": false}, "about": "pv_input.main.1", "verdict": "breaks"},
	"voltage unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "pv_input.main.1", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, earth_fault.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
