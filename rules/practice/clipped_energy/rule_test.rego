package codebooks.practice.clipped_energy_test

import data.codebooks.practice.clipped_energy

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charger.main.clipped_energy": "5 %"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.clipped_energy": "4.9995 %"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charger.main.clipped_energy": "5.0005 %"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.clipped_energy": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown tilt": {"design": "meets", "facts": {"array.south.tilt": null}, "about": "charger.main", "verdict": "unproven"},
	"PWM cannot clip": {"design": "meets", "facts": {"controller.reed-70.kind": "pwm"}, "about": "charger.main", "verdict": "does_not_apply"},
	"unknown kind": {"design": "meets", "facts": {"controller.reed-70.kind": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, clipped_energy.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
