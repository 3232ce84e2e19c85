package codebooks.datasheet.controller_currents_test

import data.codebooks.datasheet.controller_currents

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"controller.reed-70.pv_current_max": "50 A"}, "about": "controller.reed-70", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"controller.reed-70.pv_current_max": "49.995 A"}, "about": "controller.reed-70", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"controller.reed-70.pv_current_max": "50.005 A"}, "about": "controller.reed-70", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"controller.reed-70.pv_current_max": null}, "about": "controller.reed-70", "verdict": "unproven"},
	"unknown controller.reed-70.pv_short_circuit_max": {"design": "meets", "facts": {"controller.reed-70.pv_short_circuit_max": null}, "about": "controller.reed-70", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, controller_currents.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
