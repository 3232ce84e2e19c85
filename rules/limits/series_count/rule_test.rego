package codebooks.limits.series_count_test

import data.codebooks.limits.series_count

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.series": 2}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.series": 1}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.series": 3}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.series": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown battery.peat-100.series_max": {"design": "meets", "facts": {"battery.peat-100.series_max": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, series_count.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
