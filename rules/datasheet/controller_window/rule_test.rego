package codebooks.datasheet.controller_window_test

import data.codebooks.datasheet.controller_window

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"controller.reed-70.mppt_voltage_max": "150 V"}, "about": "controller.reed-70", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"controller.reed-70.mppt_voltage_max": "149.985 V"}, "about": "controller.reed-70", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"controller.reed-70.mppt_voltage_max": "150.015 V"}, "about": "controller.reed-70", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"controller.reed-70.mppt_voltage_max": null}, "about": "controller.reed-70", "verdict": "unproven"},
	"unknown controller.reed-70.pv_voltage_max": {"design": "meets", "facts": {"controller.reed-70.pv_voltage_max": null}, "about": "controller.reed-70", "verdict": "unproven"},
	"unknown controller.reed-70.kind": {"design": "meets", "facts": {"controller.reed-70.kind": null}, "about": "controller.reed-70", "verdict": "unproven"},
	"PWM": {"design": "meets", "facts": {"controller.reed-70.kind": "pwm"}, "about": "controller.reed-70", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, controller_window.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
