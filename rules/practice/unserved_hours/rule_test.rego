package codebooks.practice.unserved_hours_test

import data.codebooks.practice.unserved_hours

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.spare.unserved_hours": "88 h"}, "about": "bank.spare", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.spare.unserved_hours": "88.1 h"}, "about": "bank.spare", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.spare.unserved_hours": null}, "about": "bank.spare", "verdict": "unproven"},
	"longitude unknown": {"design": "meets", "facts": {"site.longitude": null}, "about": "bank.spare", "verdict": "unproven"},
	"another figure of the workshop": {"design": "meets", "facts": {"bank.spare.unserved_hours": "500 h", "param.practice.unserved_hours_max": "600 h"}, "about": "bank.spare", "verdict": "meets"},
	"an engine charges it too": {"design": "meets", "facts": {"bank.house.unserved_hours": "900 h"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, unserved_hours.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
