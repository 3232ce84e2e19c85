package codebooks.limits.mppt_window_test

import data.codebooks.limits.mppt_window

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"hot: exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.vmp_hot": "30 V"}, "about": "pv_input.main.1", "which": "hot, lower end", "verdict": "meets"},
	"hot: a step above": {"design": "meets", "facts": {"pv_input.main.1.vmp_hot": "30.003 V"}, "about": "pv_input.main.1", "which": "hot, lower end", "verdict": "meets"},
	"hot: a step below": {"design": "meets", "facts": {"pv_input.main.1.vmp_hot": "29.997 V"}, "about": "pv_input.main.1", "which": "hot, lower end", "verdict": "breaks"},
	"hot: unknown": {"design": "meets", "facts": {"pv_input.main.1.vmp_hot": null}, "about": "pv_input.main.1", "which": "hot, lower end", "verdict": "unproven"},
	"upper: exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.vmp_stc": "120 V"}, "about": "pv_input.main.1", "which": "at 25 degC, upper end", "verdict": "meets"},
	"upper: a step below": {"design": "meets", "facts": {"pv_input.main.1.vmp_stc": "119.988 V"}, "about": "pv_input.main.1", "which": "at 25 degC, upper end", "verdict": "meets"},
	"upper: a step above": {"design": "meets", "facts": {"pv_input.main.1.vmp_stc": "120.012 V"}, "about": "pv_input.main.1", "which": "at 25 degC, upper end", "verdict": "breaks"},
	"upper: unknown": {"design": "meets", "facts": {"pv_input.main.1.vmp_stc": null}, "about": "pv_input.main.1", "which": "at 25 degC, upper end", "verdict": "unproven"},
	"cold: exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.vmp_cold": "120 V"}, "about": "pv_input.main.1", "which": "cold, upper end", "verdict": "meets"},
	"cold: a step below": {"design": "meets", "facts": {"pv_input.main.1.vmp_cold": "119.988 V"}, "about": "pv_input.main.1", "which": "cold, upper end", "verdict": "meets"},
	"cold: a step above": {"design": "meets", "facts": {"pv_input.main.1.vmp_cold": "120.012 V"}, "about": "pv_input.main.1", "which": "cold, upper end", "verdict": "breaks"},
	"cold: unknown": {"design": "meets", "facts": {"pv_input.main.1.vmp_cold": null}, "about": "pv_input.main.1", "which": "cold, upper end", "verdict": "unproven"},
	"cold: PWM": {"design": "meets", "facts": {"controller.reed-70.kind": "pwm"}, "about": "pv_input.main.1", "which": "cold, upper end", "verdict": "does_not_apply"},
	"unknown controller.reed-70.mppt_voltage_min": {"design": "meets", "facts": {"controller.reed-70.mppt_voltage_min": null}, "about": "pv_input.main.1", "which": "hot, lower end", "verdict": "unproven"},
	"unknown controller.reed-70.mppt_voltage_max": {"design": "meets", "facts": {"controller.reed-70.mppt_voltage_max": null}, "about": "pv_input.main.1", "which": "at 25 degC, upper end", "verdict": "unproven"},
	"unknown controller.reed-70.kind": {"design": "meets", "facts": {"controller.reed-70.kind": null}, "about": "pv_input.main.1", "which": "hot, lower end", "verdict": "unproven"},
	"PWM has no window": {"design": "meets", "facts": {"controller.reed-70.kind": "pwm"}, "about": "pv_input.main.1", "which": "hot, lower end", "verdict": "does_not_apply"},
	"PWM has no upper end": {"design": "meets", "facts": {"controller.reed-70.kind": "pwm"}, "about": "pv_input.main.1", "which": "at 25 degC, upper end", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, mppt_window.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
