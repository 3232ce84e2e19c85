package codebooks.limits.passcode_test

import data.codebooks.limits.passcode

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"charger.main.settings.passcode_changed": true}, "about": "charger.main", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"charger.main.settings.passcode_changed": false}, "about": "charger.main", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"charger.main.settings.passcode_changed": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, passcode.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
