package codebooks.limits.pwm_array_voltage_test

import data.codebooks.limits.pwm_array_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.vmp_hot": "28.4 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.vmp_hot": "28.40284 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.vmp_hot": "28.39716 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.vmp_hot": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown charger.main.settings.absorption": {"design": "meets", "facts": {"charger.main.settings.absorption": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"a tracker": {"design": "meets", "facts": {"controller.reed-70.kind": "mppt"}, "about": "pv_input.main.1", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, pwm_array_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
