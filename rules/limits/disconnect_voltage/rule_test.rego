package codebooks.limits.disconnect_voltage_test

import data.codebooks.limits.disconnect_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"PV side: exactly at the limit": {"design": "meets", "facts": {"disconnect.array.south.bus_voltage": "250 V"}, "about": "disconnect.array.south", "verdict": "meets"},
	"PV side: a step below": {"design": "meets", "facts": {"disconnect.array.south.bus_voltage": "249.975 V"}, "about": "disconnect.array.south", "verdict": "meets"},
	"PV side: a step above": {"design": "meets", "facts": {"disconnect.array.south.bus_voltage": "250.025 V"}, "about": "disconnect.array.south", "verdict": "breaks"},
	"PV side: unknown": {"design": "meets", "facts": {"disconnect.array.south.bus_voltage": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"bank side: exactly at the limit": {"design": "meets", "facts": {"disconnect.bank.house.bus_voltage": "80 V"}, "about": "disconnect.bank.house", "verdict": "meets"},
	"bank side: a step below": {"design": "meets", "facts": {"disconnect.bank.house.bus_voltage": "79.992 V"}, "about": "disconnect.bank.house", "verdict": "meets"},
	"bank side: a step above": {"design": "meets", "facts": {"disconnect.bank.house.bus_voltage": "80.008 V"}, "about": "disconnect.bank.house", "verdict": "breaks"},
	"bank side: unknown": {"design": "meets", "facts": {"disconnect.bank.house.bus_voltage": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
	"unknown disconnect.array.south.voltage": {"design": "meets", "facts": {"disconnect.array.south.voltage": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"on the AC side": {"design": "meets", "facts": {}, "about": "disconnect.load.freezer", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
