package codebooks.us_2023.bank_listed_test

import data.codebooks.us_2023.bank_listed

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"listed": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"not": {"design": "meets", "facts": {"bank.house.declared.us_2023.listed": false}, "about": "bank.house", "verdict": "breaks"},
	"12.8 V and 78 Ah: 998 Wh": {"design": "meets", "facts": {"bank.house.energy": "998.4 Wh", "bank.house.declared.us_2023.listed": false}, "about": "bank.house", "verdict": "does_not_apply"},
	"exactly 1 kWh": {"design": "meets", "facts": {"bank.house.energy": "1 kWh", "bank.house.declared.us_2023.listed": false}, "about": "bank.house", "verdict": "does_not_apply"},
	"1001 Wh": {"design": "meets", "facts": {"bank.house.energy": "1001 Wh", "bank.house.declared.us_2023.listed": false}, "about": "bank.house", "verdict": "breaks"},
	"lead": {"design": "meets", "facts": {"battery.mesa-100.chemistry": "agm", "bank.house.declared.us_2023.listed": false}, "about": "bank.house", "verdict": "does_not_apply"},
	"unknown bank.house.declared.us_2023.listed": {"design": "meets", "facts": {"bank.house.declared.us_2023.listed": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown bank.house.energy": {"design": "meets", "facts": {"bank.house.energy": null}, "about": "bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_listed.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
