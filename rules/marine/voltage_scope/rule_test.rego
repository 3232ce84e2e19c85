package codebooks.marine.voltage_scope_test

import data.codebooks.marine.voltage_scope

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.nominal": "50 V"}, "about": "bank.house", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"bank.house.nominal": "49.95 V"}, "about": "bank.house", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"bank.house.nominal": "50.05 V"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.nominal": null}, "about": "bank.house", "verdict": "unproven"},
	"16 cells, 51.2 V": {"design": "meets", "facts": {"bank.house.nominal": "51.2 V"}, "about": "bank.house", "verdict": "breaks"},
	"15 cells, 48.0 V": {"design": "meets", "facts": {"bank.house.nominal": "48 V"}, "about": "bank.house", "verdict": "meets"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, voltage_scope.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
