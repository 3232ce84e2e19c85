package codebooks.us_2023.disconnect_accessible_test

import data.codebooks.us_2023.disconnect_accessible

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"out of reach": {"design": "meets", "facts": {"disconnect.array.south.declared.us_2023.readily_accessible": false}, "about": "disconnect.array.south", "which": "reach", "verdict": "breaks"},
	"not lockable": {"design": "meets", "facts": {"disconnect.array.south.declared.us_2023.lockable": false}, "about": "disconnect.array.south", "which": "lock", "verdict": "breaks"},
	"a bank's at exactly 3 m": {"design": "meets", "facts": {"disconnect.bank.house.declared.us_2023.lockable": false, "disconnect.bank.house.declared.us_2023.distance_to_equipment": "3 m"}, "about": "disconnect.bank.house", "which": "lock", "verdict": "meets"},
	"a bank's at 3.01 m": {"design": "meets", "facts": {"disconnect.bank.house.declared.us_2023.lockable": false, "disconnect.bank.house.declared.us_2023.distance_to_equipment": "3.01 m"}, "about": "disconnect.bank.house", "which": "lock", "verdict": "breaks"},
	"a bank's that can be locked, far off": {"design": "meets", "facts": {"disconnect.bank.house.declared.us_2023.distance_to_equipment": "9 m"}, "about": "disconnect.bank.house", "which": "lock", "verdict": "meets"},
	"unknown disconnect.array.south.declared.us_2023.readily_accessible": {"design": "meets", "facts": {"disconnect.array.south.declared.us_2023.readily_accessible": null}, "about": "disconnect.array.south", "which": "reach", "verdict": "unproven"},
	"unknown disconnect.array.south.declared.us_2023.lockable": {"design": "meets", "facts": {"disconnect.array.south.declared.us_2023.lockable": null}, "about": "disconnect.array.south", "which": "lock", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.array.south", "which": "reach", "verdict": "does_not_apply"},
	"on a boat, lock": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.array.south", "which": "lock", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_accessible.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
