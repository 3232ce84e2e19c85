package codebooks.us_2023.storage_voltage_test

import data.codebooks.us_2023.storage_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"dwelling: exactly at the limit": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.voltage_max": "100 V"}, "about": "bank.house", "verdict": "meets"},
	"dwelling: a step below": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.voltage_max": "99.99 V"}, "about": "bank.house", "verdict": "meets"},
	"dwelling: a step above": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.voltage_max": "100.01 V"}, "about": "bank.house", "verdict": "breaks"},
	"other building: exactly at the limit": {"design": "meets", "facts": {"bank.house.voltage_max": "600 V"}, "about": "bank.house", "verdict": "meets"},
	"other building: a step below": {"design": "meets", "facts": {"bank.house.voltage_max": "599.94 V"}, "about": "bank.house", "verdict": "meets"},
	"other building: a step above": {"design": "meets", "facts": {"bank.house.voltage_max": "600.06 V"}, "about": "bank.house", "verdict": "breaks"},
	"100 V needs no word on the building": {"design": "meets", "facts": {"bank.house.voltage_max": "100 V", "site.declared.us_2023.occupancy": null}, "about": "bank.house", "verdict": "meets"},
	"a step more does": {"design": "meets", "facts": {"bank.house.voltage_max": "100.1 V", "site.declared.us_2023.occupancy": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown bank.house.voltage_max": {"design": "meets", "facts": {"bank.house.voltage_max": null}, "about": "bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, storage_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
