package codebooks.datasheet.battery_floor_test

import data.codebooks.datasheet.battery_floor

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"battery.peat-100.discharge_voltage_min": "16 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"battery.peat-100.discharge_voltage_min": "25.6 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"battery.peat-100.discharge_voltage_min": "15.99 V"}, "about": "battery.peat-100", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"battery.peat-100.discharge_voltage_min": "25.61 V"}, "about": "battery.peat-100", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"battery.peat-100.discharge_voltage_min": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.cells": {"design": "meets", "facts": {"battery.peat-100.cells": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.nominal": {"design": "meets", "facts": {"battery.peat-100.nominal": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.chemistry": {"design": "meets", "facts": {"battery.peat-100.chemistry": null}, "about": "battery.peat-100", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_floor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
