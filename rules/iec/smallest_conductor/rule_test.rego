package codebooks.iec.smallest_conductor_test

import data.codebooks.iec.smallest_conductor

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5015 mm2"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.4985 mm2"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.load.lights.size": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"metal of less than its nominal size": {"design": "meets", "facts": {"cable_run.load.lights.area": "1.49 mm2"}, "about": "cable_run.load.lights", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, smallest_conductor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
