package codebooks.us_2023.device_poles_test

import data.codebooks.us_2023.device_poles

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"on the AC side": {"design": "meets", "facts": {}, "about": "protection.load.pump", "verdict": "does_not_apply"},
	"floating, two poles": {"design": "meets", "facts": {}, "about": "protection.charger.main", "verdict": "meets"},
	"floating, one pole": {"design": "meets", "facts": {"protection.charger.main.poles": 1}, "about": "protection.charger.main", "verdict": "breaks"},
	"grounded": {"design": "meets", "facts": {"grounding.dc": "negative", "protection.charger.main.poles": 1}, "about": "protection.charger.main", "verdict": "does_not_apply"},
	"an array's": {"design": "meets", "facts": {}, "about": "protection.array.south", "verdict": "does_not_apply"},
	"unknown protection.charger.main.poles": {"design": "meets", "facts": {"protection.charger.main.poles": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"unknown grounding.dc": {"design": "meets", "facts": {"grounding.dc": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, device_poles.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
