package codebooks.practice.settings_locked_test

import data.codebooks.practice.settings_locked

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"locked": {"design": "meets", "facts": {"charger.main.settings.locked": true}, "about": "charger.main", "verdict": "meets"},
	"open": {"design": "meets", "facts": {"charger.main.settings.locked": false}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.settings.locked": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, settings_locked.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
