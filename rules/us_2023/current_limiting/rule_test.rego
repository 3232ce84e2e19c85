package codebooks.us_2023.current_limiting_test

import data.codebooks.us_2023.current_limiting

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"no device": {"design": "breaks", "facts": {}, "about": "bank.house", "verdict": "breaks"},
	"no device, on a boat": {"design": "breaks", "facts": {"site.place": "boat"}, "about": "bank.house", "verdict": "does_not_apply"},
	"a breaker of that letter": {"design": "meets", "facts": {"protection.bank.house.kind": "breaker"}, "about": "bank.house", "verdict": "breaks"},
	"class T": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"another": {"design": "meets", "facts": {"protection.bank.house.class": "ANL"}, "about": "bank.house", "verdict": "breaks"},
	"another so listed": {"design": "meets", "facts": {"protection.bank.house.class": "ANL", "protection.bank.house.declared.us_2023.current_limiting": true}, "about": "bank.house", "verdict": "meets"},
	"another, silent": {"design": "meets", "facts": {"protection.bank.house.class": "ANL", "protection.bank.house.declared.us_2023.current_limiting": null}, "about": "bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, current_limiting.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
