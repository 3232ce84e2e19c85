package codebooks.datasheet.controller_start_test

import data.codebooks.datasheet.controller_start

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"controller.reed-70.run_above_bank": "5 V"}, "about": "controller.reed-70", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"controller.reed-70.run_above_bank": "4.9995 V"}, "about": "controller.reed-70", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"controller.reed-70.run_above_bank": "5.0005 V"}, "about": "controller.reed-70", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"controller.reed-70.run_above_bank": null}, "about": "controller.reed-70", "verdict": "unproven"},
	"unknown controller.reed-70.start_above_bank": {"design": "meets", "facts": {"controller.reed-70.start_above_bank": null}, "about": "controller.reed-70", "verdict": "unproven"},
	"PWM": {"design": "meets", "facts": {"controller.reed-70.kind": "pwm"}, "about": "controller.reed-70", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, controller_start.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
