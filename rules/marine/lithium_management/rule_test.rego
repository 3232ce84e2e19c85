package codebooks.marine.lithium_management_test

import data.codebooks.marine.lithium_management

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"cold: exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": "0 degC"}, "about": "bank.house", "which": "cold", "verdict": "meets"},
	"cold: a step inside": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": "0.1 degC"}, "about": "bank.house", "which": "cold", "verdict": "meets"},
	"cold: a step beyond": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": "-0.1 degC"}, "about": "bank.house", "which": "cold", "verdict": "breaks"},
	"cold: unknown": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": null}, "about": "bank.house", "which": "cold", "verdict": "unproven"},
	"over-voltage: exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": "28.8 V"}, "about": "bank.house", "which": "over-voltage", "verdict": "meets"},
	"over-voltage: a step inside": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": "28.8288 V"}, "about": "bank.house", "which": "over-voltage", "verdict": "meets"},
	"over-voltage: a step beyond": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": "28.7712 V"}, "about": "bank.house", "which": "over-voltage", "verdict": "breaks"},
	"over-voltage: unknown": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": null}, "about": "bank.house", "which": "over-voltage", "verdict": "unproven"},
	"under-voltage: exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": "25.6 V"}, "about": "bank.house", "which": "under-voltage", "verdict": "meets"},
	"under-voltage: a step inside": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": "25.5744 V"}, "about": "bank.house", "which": "under-voltage", "verdict": "meets"},
	"under-voltage: a step beyond": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": "25.6256 V"}, "about": "bank.house", "which": "under-voltage", "verdict": "breaks"},
	"under-voltage: unknown": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": null}, "about": "bank.house", "which": "under-voltage", "verdict": "unproven"},
	"charge current, no more than it can ever give: exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.bms.charge_cutoff": "2000 A"}, "about": "bank.house", "which": "charge current", "verdict": "meets"},
	"charge current, no more than it can ever give: a step inside": {"design": "meets", "facts": {"battery.peat-100.bms.charge_cutoff": "1998 A"}, "about": "bank.house", "which": "charge current", "verdict": "meets"},
	"charge current, no more than it can ever give: a step beyond": {"design": "meets", "facts": {"battery.peat-100.bms.charge_cutoff": "2002 A"}, "about": "bank.house", "which": "charge current", "verdict": "breaks"},
	"charge current, no more than it can ever give: unknown": {"design": "meets", "facts": {"battery.peat-100.bms.charge_cutoff": null}, "about": "bank.house", "which": "charge current", "verdict": "unproven"},
	"discharge current, no more than it can ever give: exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.bms.discharge_cutoff": "2000 A"}, "about": "bank.house", "which": "discharge current", "verdict": "meets"},
	"discharge current, no more than it can ever give: a step inside": {"design": "meets", "facts": {"battery.peat-100.bms.discharge_cutoff": "1998 A"}, "about": "bank.house", "which": "discharge current", "verdict": "meets"},
	"discharge current, no more than it can ever give: a step beyond": {"design": "meets", "facts": {"battery.peat-100.bms.discharge_cutoff": "2002 A"}, "about": "bank.house", "which": "discharge current", "verdict": "breaks"},
	"discharge current, no more than it can ever give: unknown": {"design": "meets", "facts": {"battery.peat-100.bms.discharge_cutoff": null}, "about": "bank.house", "which": "discharge current", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {}, "about": "bank.start", "which": "cold", "verdict": "does_not_apply"},
	"500 Wh, ISO": {"design": "meets", "facts": {"bank.house.energy": "500 Wh"}, "about": "bank.house", "which": "cold", "verdict": "does_not_apply"},
	"not a boat (cold)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "cold", "verdict": "does_not_apply"},
	"place unknown (cold)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "cold", "verdict": "unproven"},
	"charge current: 1999 A by its internal resistance": {"design": "meets", "facts": {"battery.peat-100.short_circuit": "1999 A", "battery.peat-100.bms.charge_cutoff": "2000 A"}, "about": "bank.house", "which": "charge current", "verdict": "breaks"},
	"discharge current: 1999 A by its internal resistance": {"design": "meets", "facts": {"battery.peat-100.short_circuit": "1999 A", "battery.peat-100.bms.discharge_cutoff": "2000 A"}, "about": "bank.house", "which": "discharge current", "verdict": "breaks"},
	"over-voltage: 3.9 V a cell of iron phosphate": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": "31.2 V"}, "about": "bank.house", "which": "over-voltage", "verdict": "meets"},
	"over-voltage: a step above that": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": "31.22 V"}, "about": "bank.house", "which": "over-voltage", "verdict": "breaks"},
	"over-voltage: 40 V protects nothing": {"design": "meets", "facts": {"battery.peat-100.bms.over_voltage": "40 V"}, "about": "bank.house", "which": "over-voltage", "verdict": "breaks"},
	"over-voltage: 4.35 V a cell of NMC": {"design": "meets", "facts": {"battery.peat-100.chemistry": "nmc", "battery.peat-100.bms.over_voltage": "34.8 V"}, "about": "bank.house", "which": "over-voltage", "verdict": "meets"},
	"over-voltage: a step above that, NMC": {"design": "meets", "facts": {"battery.peat-100.chemistry": "nmc", "battery.peat-100.bms.over_voltage": "34.83 V"}, "about": "bank.house", "which": "over-voltage", "verdict": "breaks"},
	"over-voltage: cells unknown": {"design": "meets", "facts": {"battery.peat-100.cells": null}, "about": "bank.house", "which": "over-voltage", "verdict": "unproven"},
	"under-voltage: 2 V a cell of iron phosphate": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": "16 V"}, "about": "bank.house", "which": "under-voltage", "verdict": "meets"},
	"under-voltage: a step below that": {"design": "meets", "facts": {"battery.peat-100.bms.under_voltage": "15.98 V"}, "about": "bank.house", "which": "under-voltage", "verdict": "breaks"},
	"under-voltage: 2.5 V a cell of NMC": {"design": "meets", "facts": {"battery.peat-100.chemistry": "nmc", "battery.peat-100.bms.under_voltage": "20 V"}, "about": "bank.house", "which": "under-voltage", "verdict": "meets"},
	"under-voltage: a step below that, NMC": {"design": "meets", "facts": {"battery.peat-100.chemistry": "nmc", "battery.peat-100.bms.under_voltage": "19.98 V"}, "about": "bank.house", "which": "under-voltage", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, lithium_management.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
