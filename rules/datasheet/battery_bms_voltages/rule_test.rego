package codebooks.datasheet.battery_bms_voltages_test

import data.codebooks.datasheet.battery_bms_voltages

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"over: exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": "28.8 V"}, "about": "battery.peat-100", "which": "over-voltage", "verdict": "meets"},
	"over: a step above": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": "28.80288 V"}, "about": "battery.peat-100", "which": "over-voltage", "verdict": "meets"},
	"over: a step below": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": "28.79712 V"}, "about": "battery.peat-100", "which": "over-voltage", "verdict": "breaks"},
	"over: unknown": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": null}, "about": "battery.peat-100", "which": "over-voltage", "verdict": "unproven"},
	"under: exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": "22 V"}, "about": "battery.peat-100", "which": "under-voltage", "verdict": "meets"},
	"under: a step below": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": "21.9978 V"}, "about": "battery.peat-100", "which": "under-voltage", "verdict": "meets"},
	"under: a step above": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": "22.0022 V"}, "about": "battery.peat-100", "which": "under-voltage", "verdict": "breaks"},
	"under: unknown": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": null}, "about": "battery.peat-100", "which": "under-voltage", "verdict": "unproven"},
	"unknown battery.peat-100.absorption_max": {"design": "meets", "facts": {"battery.peat-100.absorption_max": null}, "about": "battery.peat-100", "which": "over-voltage", "verdict": "unproven"},
	"lead, over": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded"}, "about": "battery.peat-100", "which": "over-voltage", "verdict": "does_not_apply"},
	"lead, under": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded"}, "about": "battery.peat-100", "which": "under-voltage", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_bms_voltages.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
