package codebooks.fell_county.voltage_drop_test

import data.codebooks.fell_county.voltage_drop

# Each case: the facts put in place of the design's own, and the verdict owed.
cases := {
	"exactly at the limit": {"facts": {"cable_run.array.south.path_drop": "2 %"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step below": {"facts": {"cable_run.array.south.path_drop": "1.999 %"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step above": {"facts": {"cable_run.array.south.path_drop": "2.001 %"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"unknown": {"facts": {"cable_run.array.south.length": null}, "about": "cable_run.array.south", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts("meets")
	verdicts := test.verdicts(system, voltage_drop.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about]
}
