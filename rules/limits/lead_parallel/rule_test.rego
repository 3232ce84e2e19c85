package codebooks.limits.lead_parallel_test

import data.codebooks.limits.lead_parallel

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.parallel": 4}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.parallel": 3}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.parallel": 5}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.parallel": null}, "about": "bank.house", "verdict": "unproven"},
	"lithium": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4"}, "about": "bank.house", "verdict": "does_not_apply"},
	"unknown battery.bog-12.chemistry": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, lead_parallel.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
