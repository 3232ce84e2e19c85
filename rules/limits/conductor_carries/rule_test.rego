package codebooks.limits.conductor_carries_test

import data.codebooks.limits.conductor_carries

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.current": "80 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"cable_run.array.south.current": "79.992 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"cable_run.array.south.current": "80.008 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.array.south.current": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.ampacity": {"design": "meets", "facts": {"cable_run.array.south.ampacity": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown panel.fen-200.isc": {"design": "meets", "facts": {"panel.fen-200.isc": null}, "about": "cable_run.array.south", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_carries.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
