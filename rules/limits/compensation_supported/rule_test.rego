package codebooks.limits.compensation_supported_test

import data.codebooks.limits.compensation_supported

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"controller.reed-70.compensation_max": "-1 mV/K", "charger.main.settings.temperature_compensation": "-0.008 V/K"}, "about": "charger.main", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"controller.reed-70.compensation_max": "-1 mV/K", "charger.main.settings.temperature_compensation": "-0.001 V/K"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"controller.reed-70.compensation_max": "-1 mV/K", "charger.main.settings.temperature_compensation": "-0.008001 V/K"}, "about": "charger.main", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"controller.reed-70.compensation_max": "-1 mV/K", "charger.main.settings.temperature_compensation": "-0.000999 V/K"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"controller.reed-70.compensation_max": "-1 mV/K", "charger.main.settings.temperature_compensation": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown controller.reed-70.compensation_min": {"design": "meets", "facts": {"controller.reed-70.compensation_min": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown controller.reed-70.compensation_max": {"design": "meets", "facts": {"controller.reed-70.compensation_max": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, compensation_supported.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
