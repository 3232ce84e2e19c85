package codebooks.limits.source_voltage_test

import data.codebooks.limits.source_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charge_source.engine.charge_voltage": "28.8 V"}, "about": "charge_source.engine", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charge_source.engine.charge_voltage": "28.79712 V"}, "about": "charge_source.engine", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charge_source.engine.charge_voltage": "28.80288 V"}, "about": "charge_source.engine", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charge_source.engine.charge_voltage": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"unknown battery.peat-100.absorption_max": {"design": "meets", "facts": {"battery.peat-100.absorption_max": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"two batteries in series": {"design": "meets", "facts": {"bank.house.series": 2, "charge_source.engine.charge_voltage": "50 V"}, "about": "charge_source.engine", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, source_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
