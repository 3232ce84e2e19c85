package codebooks.limits.pwm_input_current_test

import data.codebooks.limits.pwm_input_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"input: exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.isc_max": "45 A"}, "about": "pv_input.main.1", "which": "input", "verdict": "meets"},
	"input: a step below": {"design": "meets", "facts": {"pv_input.main.1.isc_max": "44.9955 A"}, "about": "pv_input.main.1", "which": "input", "verdict": "meets"},
	"input: a step above": {"design": "meets", "facts": {"pv_input.main.1.isc_max": "45.0045 A"}, "about": "pv_input.main.1", "which": "input", "verdict": "breaks"},
	"input: unknown": {"design": "meets", "facts": {"pv_input.main.1.isc_max": null}, "about": "pv_input.main.1", "which": "input", "verdict": "unproven"},
	"charge: exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.isc_max": "70 A"}, "about": "pv_input.main.1", "which": "charge current", "verdict": "meets"},
	"charge: a step below": {"design": "meets", "facts": {"pv_input.main.1.isc_max": "69.993 A"}, "about": "pv_input.main.1", "which": "charge current", "verdict": "meets"},
	"charge: a step above": {"design": "meets", "facts": {"pv_input.main.1.isc_max": "70.007 A"}, "about": "pv_input.main.1", "which": "charge current", "verdict": "breaks"},
	"charge: unknown": {"design": "meets", "facts": {"pv_input.main.1.isc_max": null}, "about": "pv_input.main.1", "which": "charge current", "verdict": "unproven"},
	"unknown controller.reed-70.pv_current_max": {"design": "meets", "facts": {"controller.reed-70.pv_current_max": null}, "about": "pv_input.main.1", "which": "input", "verdict": "unproven"},
	"unknown controller.reed-70.charge_current_max": {"design": "meets", "facts": {"controller.reed-70.charge_current_max": null}, "about": "pv_input.main.1", "which": "charge current", "verdict": "unproven"},
	"a tracker": {"design": "meets", "facts": {"controller.reed-70.kind": "mppt"}, "about": "pv_input.main.1", "which": "input", "verdict": "does_not_apply"},
	"a tracker's charge current": {"design": "meets", "facts": {"controller.reed-70.kind": "mppt"}, "about": "pv_input.main.1", "which": "charge current", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, pwm_input_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
