package codebooks.us_2023.disconnect_current_test

import data.codebooks.us_2023.disconnect_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"array, 60 A: 1.25 x 48 A: exactly at the limit": {"design": "meets", "facts": {"disconnect.array.south.current": "48 A"}, "about": "disconnect.array.south", "verdict": "meets"},
	"array, 60 A: 1.25 x 48 A: a step below": {"design": "meets", "facts": {"disconnect.array.south.current": "47.9952 A"}, "about": "disconnect.array.south", "verdict": "meets"},
	"array, 60 A: 1.25 x 48 A: a step above": {"design": "meets", "facts": {"disconnect.array.south.current": "48.0048 A"}, "about": "disconnect.array.south", "verdict": "breaks"},
	"bank: exactly at the limit": {"design": "meets", "facts": {"disconnect.bank.house.current": "200 A"}, "about": "disconnect.bank.house", "verdict": "meets"},
	"bank: a step below": {"design": "meets", "facts": {"disconnect.bank.house.current": "199.98 A"}, "about": "disconnect.bank.house", "verdict": "meets"},
	"bank: a step above": {"design": "meets", "facts": {"disconnect.bank.house.current": "200.02 A"}, "about": "disconnect.bank.house", "verdict": "breaks"},
	"unknown disconnect.array.south.rating": {"design": "meets", "facts": {"disconnect.array.south.rating": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"unknown panel.sage-330.isc": {"design": "meets", "facts": {"panel.sage-330.isc": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.array.south", "verdict": "does_not_apply"},
	"on a boat, disconnect.bank.house": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
