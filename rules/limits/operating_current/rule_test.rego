package codebooks.limits.operating_current_test

import data.codebooks.limits.operating_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.imp_stc": "35 A"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.imp_stc": "34.9965 A"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.imp_stc": "35.0035 A"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.imp_stc": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown panel.fen-200.imp": {"design": "meets", "facts": {"panel.fen-200.imp": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown controller.reed-70.pv_current_max": {"design": "meets", "facts": {"controller.reed-70.pv_current_max": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"PWM": {"design": "meets", "facts": {"controller.reed-70.kind": "pwm"}, "about": "pv_input.main.1", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, operating_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
