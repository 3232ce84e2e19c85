package codebooks.marine.switch_poles_test

import data.codebooks.marine.switch_poles

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"two poles": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"one pole": {"design": "meets", "facts": {"disconnect.bank.house.poles": 1}, "about": "bank.house", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"disconnect.bank.house.poles": null}, "about": "bank.house", "verdict": "unproven"},
	"negative grounded, poles unknown": {"design": "meets", "facts": {"grounding.dc": "negative", "disconnect.bank.house.poles": null}, "about": "bank.house", "verdict": "does_not_apply"},
	"earthing unknown": {"design": "meets", "facts": {"grounding.dc": null}, "about": "bank.house", "verdict": "unproven"},
	"no switch": {"design": "meets", "facts": {}, "about": "bank.spare", "verdict": "does_not_apply"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, switch_poles.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
