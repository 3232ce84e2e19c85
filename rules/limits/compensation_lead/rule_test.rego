package codebooks.limits.compensation_lead_test

import data.codebooks.limits.compensation_lead

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"charger.main.settings.temperature_compensation": "-0.005 V/K"}, "about": "charger.main", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"charger.main.settings.temperature_compensation": "-0.003 V/K"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.settings.temperature_compensation": "-0.005001 V/K"}, "about": "charger.main", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"charger.main.settings.temperature_compensation": "-0.002999 V/K"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.settings.temperature_compensation": null}, "about": "charger.main", "verdict": "unproven"},
	"lithium": {"design": "meets", "facts": {"battery.bog-12.chemistry": "nmc"}, "about": "charger.main", "verdict": "does_not_apply"},
	"unknown battery.bog-12.chemistry": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, compensation_lead.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
