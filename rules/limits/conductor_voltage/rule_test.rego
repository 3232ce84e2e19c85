package codebooks.limits.conductor_voltage_test

import data.codebooks.limits.conductor_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"PV side: exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.bus_voltage": "1000 V"}, "about": "cable_run.array.south", "verdict": "meets"},
	"PV side: a step below": {"design": "meets", "facts": {"cable_run.array.south.bus_voltage": "999.9 V"}, "about": "cable_run.array.south", "verdict": "meets"},
	"PV side: a step above": {"design": "meets", "facts": {"cable_run.array.south.bus_voltage": "1000.1 V"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"PV side: unknown": {"design": "meets", "facts": {"cable_run.array.south.bus_voltage": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"bank side: exactly at the limit": {"design": "meets", "facts": {"cable_run.charger.main.bus_voltage": "600 V"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"bank side: a step below": {"design": "meets", "facts": {"cable_run.charger.main.bus_voltage": "599.94 V"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"bank side: a step above": {"design": "meets", "facts": {"cable_run.charger.main.bus_voltage": "600.06 V"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"bank side: unknown": {"design": "meets", "facts": {"cable_run.charger.main.bus_voltage": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown cable_run.array.south.voltage": {"design": "meets", "facts": {"cable_run.array.south.voltage": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"an AC load's: exactly at the limit": {"design": "meets", "facts": {"cable_run.load.freezer.bus_voltage": "500 V"}, "about": "cable_run.load.freezer", "verdict": "meets"},
	"an AC load's: a step above": {"design": "meets", "facts": {"cable_run.load.freezer.bus_voltage": "500.05 V"}, "about": "cable_run.load.freezer", "verdict": "breaks"},
	"an AC load's, in cable for a boat": {"design": "meets", "facts": {"cable_run.load.freezer.voltage": "60 V"}, "about": "cable_run.load.freezer", "verdict": "breaks"},
	"an AC load's, in cable that does not say": {"design": "meets", "facts": {"cable_run.load.freezer.voltage": null}, "about": "cable_run.load.freezer", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
