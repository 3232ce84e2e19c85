package codebooks.marine.poles_test

import data.codebooks.marine.poles

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"two poles": {"design": "meets", "facts": {}, "about": "protection.bank.house", "verdict": "meets"},
	"one pole": {"design": "meets", "facts": {"protection.bank.house.poles": 1}, "about": "protection.bank.house", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"protection.bank.house.poles": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"a breaker of a charger, one pole": {"design": "meets", "facts": {"protection.charger.main.poles": 1}, "about": "protection.charger.main", "verdict": "breaks"},
	"negative grounded, poles unknown": {"design": "meets", "facts": {"grounding.dc": "negative", "protection.bank.house.poles": null}, "about": "protection.bank.house", "verdict": "does_not_apply"},
	"earthing unknown": {"design": "meets", "facts": {"grounding.dc": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"between batteries": {"design": "meets", "facts": {}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
	"on the PV side": {"design": "meets", "facts": {}, "about": "protection.string.south.a", "verdict": "does_not_apply"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "protection.bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "protection.bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, poles.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
