package codebooks.limits.bank_string_protection_test

import data.codebooks.limits.bank_string_protection

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a fuse each": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"none": {"design": "breaks", "facts": {}, "about": "bank.house", "verdict": "breaks"},
	"one string": {"design": "breaks", "facts": {"bank.house.parallel": 1}, "about": "bank.house", "verdict": "does_not_apply"},
	"unknown bank.house.parallel": {"design": "meets", "facts": {"bank.house.parallel": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_string_protection.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
