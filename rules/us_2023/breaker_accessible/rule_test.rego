package codebooks.us_2023.breaker_accessible_test

import data.codebooks.us_2023.breaker_accessible

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"reached": {"design": "meets", "facts": {}, "about": "protection.array.south", "which": "reach", "verdict": "meets"},
	"locked": {"design": "meets", "facts": {}, "about": "protection.array.south", "which": "lock", "verdict": "meets"},
	"out of reach": {"design": "meets", "facts": {"protection.array.south.declared.us_2023.readily_accessible": false}, "about": "protection.array.south", "which": "reach", "verdict": "breaks"},
	"not locked": {"design": "meets", "facts": {"protection.array.south.declared.us_2023.lockable": false}, "about": "protection.array.south", "which": "lock", "verdict": "breaks"},
	"reach unknown": {"design": "meets", "facts": {"protection.array.south.declared.us_2023.readily_accessible": null}, "about": "protection.array.south", "which": "reach", "verdict": "unproven"},
	"lock unknown": {"design": "meets", "facts": {"protection.array.south.declared.us_2023.lockable": null}, "about": "protection.array.south", "which": "lock", "verdict": "unproven"},
	"a fuse, reach": {"design": "meets", "facts": {"protection.array.south.kind": "fuse", "protection.array.south.declared.us_2023.readily_accessible": false}, "about": "protection.array.south", "which": "reach", "verdict": "does_not_apply"},
	"a fuse, lock": {"design": "meets", "facts": {"protection.array.south.kind": "fuse", "protection.array.south.declared.us_2023.lockable": false}, "about": "protection.array.south", "which": "lock", "verdict": "does_not_apply"},
	"with a switch beside it": {"design": "meets", "facts": {"protection.bank.house.kind": "breaker"}, "about": "protection.bank.house", "verdict": "does_not_apply"},
	"each battery's": {"design": "meets", "facts": {"protection.bank.house.each.kind": "breaker"}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
	"a charger's": {"design": "meets", "facts": {}, "about": "protection.charger.main", "verdict": "does_not_apply"},
	"a string's": {"design": "meets", "facts": {}, "about": "protection.string.south.a", "verdict": "does_not_apply"},
	"a bank's, no switch": {"design": "breaks", "facts": {"protection.bank.house.kind": "breaker"}, "about": "protection.bank.house", "which": "lock", "verdict": "unproven"},
	"each battery's, no switch": {"design": "breaks", "facts": {"protection.bank.house.each.kind": "breaker"}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat", "protection.array.south.declared.us_2023.readily_accessible": false}, "about": "protection.array.south", "which": "reach", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, breaker_accessible.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# One that a switch stands beside has no other answer.
test_one_answer if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, breaker_accessible.check, {}) with input as system
	[] == [v | some v in verdicts; v.about == "protection.array.south"; v.verdict == "does_not_apply"]
}
