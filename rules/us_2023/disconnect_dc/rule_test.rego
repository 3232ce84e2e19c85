package codebooks.us_2023.disconnect_dc_test

import data.codebooks.us_2023.disconnect_dc

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"on the AC side": {"design": "meets", "facts": {}, "about": "disconnect.load.pump", "verdict": "does_not_apply"},
	"rated": {"design": "meets", "facts": {}, "about": "disconnect.bank.house", "verdict": "meets"},
	"not rated": {"design": "meets", "facts": {"disconnect.bank.house.dc_rated": false}, "about": "disconnect.bank.house", "verdict": "breaks"},
	"an array's not rated": {"design": "meets", "facts": {"disconnect.array.south.dc_rated": false}, "about": "disconnect.array.south", "verdict": "breaks"},
	"unknown disconnect.bank.house.dc_rated": {"design": "meets", "facts": {"disconnect.bank.house.dc_rated": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
	"on a boat, disconnect.array.south": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_dc.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
