package codebooks.practice.autonomy_test

import data.codebooks.practice.autonomy

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.autonomy_heaviest": "2 d"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.autonomy_heaviest": "2.0002 d"}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.autonomy_heaviest": "1.9998 d"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.autonomy_heaviest": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown hours": {"design": "meets", "facts": {"load.lights.hours_per_day": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown usable": {"design": "meets", "facts": {"battery.peat-100.usable": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, autonomy.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
