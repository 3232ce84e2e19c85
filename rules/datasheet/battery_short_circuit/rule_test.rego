package codebooks.datasheet.battery_short_circuit_test

import data.codebooks.datasheet.battery_short_circuit

# Each case: the design, the facts put in place of its own, and the verdict owed.
# 24 V, 100 A and 800 A: a sag of one eighth, to 21 V.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.nominal": "24 V", "battery.peat-100.short_circuit": "800 A", "battery.peat-100.discharge_voltage_min": "21 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"battery.peat-100.nominal": "24 V", "battery.peat-100.short_circuit": "799.9 A", "battery.peat-100.discharge_voltage_min": "21 V"}, "about": "battery.peat-100", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"battery.peat-100.short_circuit": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.nominal": {"design": "meets", "facts": {"battery.peat-100.nominal": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.discharge_current_max": {"design": "meets", "facts": {"battery.peat-100.discharge_current_max": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.discharge_voltage_min": {"design": "meets", "facts": {"battery.peat-100.discharge_voltage_min": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"kiloamperes written as amperes": {"design": "meets", "facts": {"battery.peat-100.short_circuit_current": "2 A"}, "about": "battery.peat-100", "verdict": "breaks"},
	"the trip of the management system": {"design": "breaks", "facts": {}, "about": "battery.peat-100", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_short_circuit.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
