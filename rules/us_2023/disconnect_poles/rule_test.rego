package codebooks.us_2023.disconnect_poles_test

import data.codebooks.us_2023.disconnect_poles

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"on the AC side": {"design": "meets", "facts": {}, "about": "disconnect.load.pump", "verdict": "does_not_apply"},
	"one pole in a PV circuit": {"design": "meets", "facts": {"disconnect.array.south.poles": 1}, "about": "disconnect.array.south", "verdict": "breaks"},
	"solidly grounded": {"design": "meets", "facts": {"disconnect.array.south.poles": 1, "grounding.ground_fault_protection": false}, "about": "disconnect.array.south", "verdict": "does_not_apply"},
	"floating bank, one pole": {"design": "meets", "facts": {"grounding.dc": "floating"}, "about": "disconnect.bank.house", "verdict": "breaks"},
	"floating bank, two poles": {"design": "meets", "facts": {"grounding.dc": "floating", "disconnect.bank.house.poles": 2}, "about": "disconnect.bank.house", "verdict": "meets"},
	"grounded bank, one pole": {"design": "meets", "facts": {}, "about": "disconnect.bank.house", "verdict": "meets"},
	"unknown disconnect.array.south.poles": {"design": "meets", "facts": {"disconnect.array.south.poles": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"unknown grounding.ground_fault_protection": {"design": "meets", "facts": {"grounding.ground_fault_protection": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"unknown grounding.dc": {"design": "meets", "facts": {"grounding.dc": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.array.south", "verdict": "does_not_apply"},
	"on a boat, disconnect.bank.house": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_poles.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
