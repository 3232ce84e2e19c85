package codebooks.limits.matched_test

import data.codebooks.limits.matched

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"bank.house.matched": true}, "about": "bank.house", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"bank.house.matched": false}, "about": "bank.house", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"bank.house.matched": null}, "about": "bank.house", "verdict": "unproven"},
	"one battery": {"design": "meets", "facts": {"bank.house.series": 1, "bank.house.parallel": 1}, "about": "bank.house", "verdict": "does_not_apply"},
	"two in series, none in parallel, not matched": {"design": "meets", "facts": {"bank.house.series": 2, "bank.house.parallel": 1, "bank.house.matched": false}, "about": "bank.house", "verdict": "breaks"},
	"a single battery, not matched": {"design": "meets", "facts": {"bank.house.series": 1, "bank.house.parallel": 1, "bank.house.matched": false}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, matched.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
