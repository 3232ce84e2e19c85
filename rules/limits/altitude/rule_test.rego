package codebooks.limits.altitude_test

import data.codebooks.limits.altitude

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"site.elevation": "3000 m"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"site.elevation": "2999.7 m"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"site.elevation": "3000.3 m"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"site.elevation": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown controller.reed-70.altitude_max": {"design": "meets", "facts": {"controller.reed-70.altitude_max": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, altitude.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
