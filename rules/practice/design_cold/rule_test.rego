package codebooks.practice.design_cold_test

import data.codebooks.practice.design_cold

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"site.coldest": "25 degC"}, "about": "site", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"site.coldest": "25.1 degC"}, "about": "site", "verdict": "breaks"},
	"a step below": {"design": "meets", "facts": {"site.coldest": "24.9 degC"}, "about": "site", "verdict": "meets"},
	"unknown": {"design": "meets", "facts": {"site.coldest": null}, "about": "site", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, design_cold.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
