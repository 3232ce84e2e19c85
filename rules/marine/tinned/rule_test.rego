package codebooks.marine.tinned_test

import data.codebooks.marine.tinned

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"tinned": {"design": "meets", "facts": {}, "about": "cable_run.load.lights", "verdict": "meets"},
	"bare": {"design": "meets", "facts": {"cable_run.load.lights.tinned": false}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.load.lights.tinned": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, tinned.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
