package codebooks.limits.ventilation_test

import data.codebooks.limits.ventilation

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"open": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"closed": {"design": "meets", "facts": {"bank.house.ventilated": false}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.ventilated": null}, "about": "bank.house", "verdict": "unproven"},
	"sealed lead": {"design": "meets", "facts": {"bank.house.ventilated": false, "battery.bog-12.chemistry": "agm"}, "about": "bank.house", "verdict": "breaks"},
	"gel": {"design": "meets", "facts": {"bank.house.ventilated": false, "battery.bog-12.chemistry": "gel"}, "about": "bank.house", "verdict": "breaks"},
	"lithium": {"design": "meets", "facts": {"bank.house.ventilated": false, "battery.bog-12.chemistry": "lifepo4"}, "about": "bank.house", "verdict": "does_not_apply"},
	"chemistry unknown": {"design": "meets", "facts": {"bank.house.ventilated": false, "battery.bog-12.chemistry": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, ventilation.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
