package codebooks.practice.take_off_test

import data.codebooks.practice.take_off

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"diagonal": {"design": "meets", "facts": {"bank.house.take_off": "diagonal"}, "about": "bank.house", "verdict": "meets"},
	"busbar": {"design": "meets", "facts": {"bank.house.take_off": "busbar"}, "about": "bank.house", "verdict": "meets"},
	"one end": {"design": "meets", "facts": {"bank.house.take_off": "one_end"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.take_off": null}, "about": "bank.house", "verdict": "unproven"},
	"one string": {"design": "meets", "facts": {"bank.house.parallel": 1}, "about": "bank.house", "verdict": "does_not_apply"},
	"unknown count": {"design": "meets", "facts": {"bank.house.parallel": null, "bank.house.take_off": "one_end"}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, take_off.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
