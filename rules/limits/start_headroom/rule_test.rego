package codebooks.limits.start_headroom_test

import data.codebooks.limits.start_headroom

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.start_headroom": "0 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.start_headroom": "0.005 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.start_headroom": "-0.005 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.start_headroom": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown controller.reed-70.start_above_bank": {"design": "meets", "facts": {"controller.reed-70.start_above_bank": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown charger.main.settings.absorption": {"design": "meets", "facts": {"charger.main.settings.absorption": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"PWM": {"design": "meets", "facts": {"controller.reed-70.kind": "pwm"}, "about": "pv_input.main.1", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, start_headroom.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
