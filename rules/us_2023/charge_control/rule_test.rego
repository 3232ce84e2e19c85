package codebooks.us_2023.charge_control_test

import data.codebooks.us_2023.charge_control

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"locked": {"design": "meets", "facts": {"charger.main.settings.passcode_changed": false}, "about": "charger.main", "verdict": "meets"},
	"passcode": {"design": "meets", "facts": {"charger.main.settings.locked": false}, "about": "charger.main", "verdict": "meets"},
	"neither": {"design": "meets", "facts": {"charger.main.settings.locked": false, "charger.main.settings.passcode_changed": false}, "about": "charger.main", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"charger.main.settings.locked": null, "charger.main.settings.passcode_changed": null}, "about": "charger.main", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, charge_control.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
