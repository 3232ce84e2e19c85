package codebooks.practice.voltage_drop_test

import data.codebooks.practice.voltage_drop

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.path_drop": "3 %"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"cable_run.array.south.path_drop": "2.9997 %"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"cable_run.array.south.path_drop": "3.0003 %"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.array.south.path_drop": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown length": {"design": "meets", "facts": {"cable_run.array.south.length": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"the limit is its own": {"design": "meets", "facts": {"cable_run.array.south.path_drop": "2 %", "param.practice.mismatch_max": "1 %", "param.practice.voltage_drop_max": "2 %"}, "about": "cable_run.array.south", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, voltage_drop.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
