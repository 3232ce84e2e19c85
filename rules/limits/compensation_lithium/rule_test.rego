package codebooks.limits.compensation_lithium_test

import data.codebooks.limits.compensation_lithium

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"none": {"design": "meets", "facts": {"charger.main.settings.temperature_compensation": "0 mV/K"}, "about": "charger.main", "verdict": "meets"},
	"a little": {"design": "meets", "facts": {"charger.main.settings.temperature_compensation": "-0.1 mV/K"}, "about": "charger.main", "verdict": "breaks"},
	"as for lead": {"design": "meets", "facts": {"charger.main.settings.temperature_compensation": "-5 mV/K"}, "about": "charger.main", "verdict": "breaks"},
	"unknown charger.main.settings.temperature_compensation": {"design": "meets", "facts": {"charger.main.settings.temperature_compensation": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown battery.peat-100.chemistry": {"design": "meets", "facts": {"battery.peat-100.chemistry": null}, "about": "charger.main", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, compensation_lithium.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
