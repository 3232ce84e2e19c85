package codebooks.limits.charge_setting_test

import data.codebooks.limits.charge_setting

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charger.main.settings.charge_current": "70 A"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.settings.charge_current": "69.993 A"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charger.main.settings.charge_current": "70.007 A"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.settings.charge_current": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown controller.reed-70.charge_current_max": {"design": "meets", "facts": {"controller.reed-70.charge_current_max": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, charge_setting.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
