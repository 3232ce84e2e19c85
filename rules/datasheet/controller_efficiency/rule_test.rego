package codebooks.datasheet.controller_efficiency_test

import data.codebooks.datasheet.controller_efficiency

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"controller.reed-70.efficiency": "75 %"}, "about": "controller.reed-70", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"controller.reed-70.efficiency": "99.5 %"}, "about": "controller.reed-70", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"controller.reed-70.efficiency": "74.99 %"}, "about": "controller.reed-70", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"controller.reed-70.efficiency": "99.51 %"}, "about": "controller.reed-70", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"controller.reed-70.efficiency": null}, "about": "controller.reed-70", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, controller_efficiency.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
