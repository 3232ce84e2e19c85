package codebooks.us_2023.conductor_smallest_test

import data.codebooks.us_2023.conductor_smallest

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"14 AWG": {"design": "meets", "facts": {"cable_run.load.lights.size": "14 AWG"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"2.08 mm2, as printed": {"design": "meets", "facts": {"cable_run.load.lights.size": "2.08 mm2"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"2.06 mm2": {"design": "meets", "facts": {"cable_run.load.lights.size": "2.06 mm2"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"1.5 mm2": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"aluminum 12 AWG": {"design": "meets", "facts": {"cable_run.load.lights.material": "Al"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"aluminum 14 AWG": {"design": "meets", "facts": {"cable_run.load.lights.material": "Al", "cable_run.load.lights.size": "14 AWG"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"unknown cable_run.load.lights.size": {"design": "meets", "facts": {"cable_run.load.lights.size": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_smallest.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
