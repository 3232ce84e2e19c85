package codebooks.limits.bank_voltage_supported_test

import data.codebooks.limits.bank_voltage_supported

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"charger.main.bank_voltage_supported": true}, "about": "charger.main", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"charger.main.bank_voltage_supported": false}, "about": "charger.main", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"charger.main.bank_voltage_supported": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_voltage_supported.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What the verdict shows beside its yes or no.
test_also if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, bank_voltage_supported.check, {}) with input as system
	[[24]] == [v.also | some v in verdicts; v.about == "charger.main"]
}
