package codebooks.limits.bank_protection_test

import data.codebooks.limits.bank_protection

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a main fuse": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"fuses in each string only": {"design": "breaks", "facts": {}, "about": "bank.house", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_protection.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
