package codebooks.us_2023.device_at_source_test

import data.codebooks.us_2023.device_at_source

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"on the AC side": {"design": "meets", "facts": {}, "about": "protection.load.pump", "verdict": "does_not_apply"},
	"there": {"design": "meets", "facts": {}, "about": "protection.load.lights", "verdict": "meets"},
	"not there": {"design": "meets", "facts": {"protection.charger.main.declared.us_2023.at_source": false}, "about": "protection.charger.main", "verdict": "breaks"},
	"a string's": {"design": "meets", "facts": {}, "about": "protection.string.south.a", "verdict": "does_not_apply"},
	"unknown protection.charger.main.declared.us_2023.at_source": {"design": "meets", "facts": {"protection.charger.main.declared.us_2023.at_source": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, device_at_source.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
