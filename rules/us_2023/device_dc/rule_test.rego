package codebooks.us_2023.device_dc_test

import data.codebooks.us_2023.device_dc

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"on the AC side": {"design": "meets", "facts": {}, "about": "protection.load.pump", "verdict": "does_not_apply"},
	"rated": {"design": "meets", "facts": {}, "about": "protection.charger.main", "verdict": "meets"},
	"not rated": {"design": "meets", "facts": {"protection.charger.main.dc_rated": false}, "about": "protection.charger.main", "verdict": "breaks"},
	"a string's not rated": {"design": "meets", "facts": {"protection.string.south.a.dc_rated": false}, "about": "protection.string.south.a", "verdict": "breaks"},
	"each battery's not rated": {"design": "meets", "facts": {"protection.bank.house.each.dc_rated": false}, "about": "protection.bank.house.each", "verdict": "breaks"},
	"unknown protection.charger.main.dc_rated": {"design": "meets", "facts": {"protection.charger.main.dc_rated": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.charger.main", "verdict": "does_not_apply"},
	"on a boat, protection.string.south.a": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.string.south.a", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, device_dc.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
