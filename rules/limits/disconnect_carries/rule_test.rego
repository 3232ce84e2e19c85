package codebooks.limits.disconnect_carries_test

import data.codebooks.limits.disconnect_carries

# 1.25 for bright sun on the PV side: 690.8(A)(1) and IEC 62548-1 take the same (transcribed).

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"disconnect.array.south.current": "50.4 A"}, "about": "disconnect.array.south", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"disconnect.array.south.current": "50.39496 A"}, "about": "disconnect.array.south", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"disconnect.array.south.current": "50.40504 A"}, "about": "disconnect.array.south", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"disconnect.array.south.current": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"the bank's: exactly at the limit": {"design": "meets", "facts": {"disconnect.bank.house.current": "200 A"}, "about": "disconnect.bank.house", "verdict": "meets"},
	"the bank's: a step below": {"design": "meets", "facts": {"disconnect.bank.house.current": "199.98 A"}, "about": "disconnect.bank.house", "verdict": "meets"},
	"the bank's: a step above": {"design": "meets", "facts": {"disconnect.bank.house.current": "200.02 A"}, "about": "disconnect.bank.house", "verdict": "breaks"},
	"the bank's: unknown": {"design": "meets", "facts": {"disconnect.bank.house.current": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
	"unknown disconnect.array.south.rating": {"design": "meets", "facts": {"disconnect.array.south.rating": null}, "about": "disconnect.array.south", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_carries.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
