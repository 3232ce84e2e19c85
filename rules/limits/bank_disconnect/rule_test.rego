package codebooks.limits.bank_disconnect_test

import data.codebooks.limits.bank_disconnect

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a switch": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"neither switch nor main fuse": {"design": "breaks", "facts": {}, "about": "bank.shed", "verdict": "breaks"},
	"a main fuse only": {"design": "breaks", "facts": {}, "about": "bank.house", "verdict": "breaks"},
	"a main breaker only": {"design": "breaks", "facts": {"protection.bank.house.kind": "breaker"}, "about": "bank.house", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_disconnect.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
