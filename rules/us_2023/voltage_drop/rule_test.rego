package codebooks.us_2023.voltage_drop_test

import data.codebooks.us_2023.voltage_drop

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.path_drop": "5 %"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"cable_run.array.south.path_drop": "4.9995 %"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"cable_run.array.south.path_drop": "5.0005 %"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"unknown cable_run.array.south.length": {"design": "meets", "facts": {"cable_run.array.south.length": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, voltage_drop.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
