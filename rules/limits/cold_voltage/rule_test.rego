package codebooks.limits.cold_voltage_test

import data.codebooks.limits.cold_voltage

# Check values, recomputed from their inputs and held here through the examples: one panel of 49.5 V
# with -0.27 %/K at -10 degC makes 54.1778 V (meets); one of 45.0 V with -0.27 %/K at -26 degC makes
# 51.1965 V (breaks).

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "150 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "149.985 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "150.015 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown controller.reed-70.pv_voltage_max": {"design": "meets", "facts": {"controller.reed-70.pv_voltage_max": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"54.1778 V, limit just above": {"design": "meets", "facts": {"controller.reed-70.pv_voltage_max": "54.1779 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"54.1778 V, limit just below": {"design": "meets", "facts": {"controller.reed-70.pv_voltage_max": "54.1777 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"51.1965 V, limit just above": {"design": "breaks", "facts": {"controller.reed-70.pv_voltage_max": "51.1966 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"51.1965 V, limit just below": {"design": "breaks", "facts": {"controller.reed-70.pv_voltage_max": "51.1964 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cold_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
