package codebooks.limits.cell_voltage_test

import data.codebooks.limits.cell_voltage

# 58.4 V on 16 iron-phosphate cells is 3.65 V a cell, exactly at the ceiling (common practice).

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.voltage_max": "29.2 V"}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.voltage_max": "29.19708 V"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.voltage_max": "29.20292 V"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.voltage_max": null}, "about": "bank.house", "verdict": "unproven"},
	"58.4 V on 16 cells": {"design": "meets", "facts": {"bank.house.voltage_max": "58.4 V", "bank.house.cells_in_series": 16}, "about": "bank.house", "verdict": "meets"},
	"58.6 V on 16 cells": {"design": "meets", "facts": {"bank.house.voltage_max": "58.6 V", "bank.house.cells_in_series": 16}, "about": "bank.house", "verdict": "breaks"},
	"unknown bank.house.cells_in_series": {"design": "meets", "facts": {"bank.house.cells_in_series": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown battery.peat-100.chemistry": {"design": "meets", "facts": {"battery.peat-100.chemistry": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown charge_source.engine.charge_voltage": {"design": "meets", "facts": {"charge_source.engine.charge_voltage": null}, "about": "bank.house", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "gel"}, "about": "bank.house", "verdict": "does_not_apply"},
	"nmc at 4.20 V": {"design": "meets", "facts": {"battery.peat-100.chemistry": "nmc", "bank.house.voltage_max": "33.6 V"}, "about": "bank.house", "verdict": "meets"},
	"sodium-ion at 4.0 V": {"design": "meets", "facts": {"battery.peat-100.chemistry": "sodium_ion", "bank.house.voltage_max": "32 V"}, "about": "bank.house", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cell_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
