package codebooks.limits.temperature_sensor_test

import data.codebooks.limits.temperature_sensor

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"charger.main.settings.bank_temperature_sensor": true}, "about": "charger.main", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"charger.main.settings.bank_temperature_sensor": false}, "about": "charger.main", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"charger.main.settings.bank_temperature_sensor": null}, "about": "charger.main", "verdict": "unproven"},
	"lithium": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4"}, "about": "charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, temperature_sensor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
