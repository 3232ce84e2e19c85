package codebooks.limits.protection_voltage_test

import data.codebooks.limits.protection_voltage

# A 58 V fuse on sixteen iron-phosphate cells at 58.4 V breaks (common practice).

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"PV side: exactly at the limit": {"design": "meets", "facts": {"protection.array.south.bus_voltage": "250 V"}, "about": "protection.array.south", "verdict": "meets"},
	"PV side: a step below": {"design": "meets", "facts": {"protection.array.south.bus_voltage": "249.975 V"}, "about": "protection.array.south", "verdict": "meets"},
	"PV side: a step above": {"design": "meets", "facts": {"protection.array.south.bus_voltage": "250.025 V"}, "about": "protection.array.south", "verdict": "breaks"},
	"PV side: unknown": {"design": "meets", "facts": {"protection.array.south.bus_voltage": null}, "about": "protection.array.south", "verdict": "unproven"},
	"bank side: exactly at the limit": {"design": "meets", "facts": {"protection.bank.house.bus_voltage": "125 V"}, "about": "protection.bank.house", "verdict": "meets"},
	"bank side: a step below": {"design": "meets", "facts": {"protection.bank.house.bus_voltage": "124.9875 V"}, "about": "protection.bank.house", "verdict": "meets"},
	"bank side: a step above": {"design": "meets", "facts": {"protection.bank.house.bus_voltage": "125.0125 V"}, "about": "protection.bank.house", "verdict": "breaks"},
	"bank side: unknown": {"design": "meets", "facts": {"protection.bank.house.bus_voltage": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"unknown protection.array.south.voltage": {"design": "meets", "facts": {"protection.array.south.voltage": null}, "about": "protection.array.south", "verdict": "unproven"},
	"58 V fuse at 58.4 V": {"design": "meets", "facts": {"protection.supply.twelve.bus_voltage": "58.4 V"}, "about": "protection.supply.twelve", "verdict": "breaks"},
	"58 V fuse at 57.6 V": {"design": "meets", "facts": {"protection.supply.twelve.bus_voltage": "57.6 V"}, "about": "protection.supply.twelve", "verdict": "meets"},
	"an input at its coldest": {"design": "meets", "facts": {"protection.string.south.a.voltage": "80 V"}, "about": "protection.string.south.a", "verdict": "breaks"},
	"behind a converter": {"design": "meets", "facts": {"protection.load.radio.voltage": "12.5 V"}, "about": "protection.load.radio", "verdict": "meets"},
	"a step less behind a converter": {"design": "meets", "facts": {"protection.load.radio.voltage": "12.49 V"}, "about": "protection.load.radio", "verdict": "breaks"},
	"on load terminals": {"design": "meets", "facts": {"protection.load.porch.voltage": "28.6 V"}, "about": "protection.load.porch", "verdict": "meets"},
	"a step less on load terminals": {"design": "meets", "facts": {"protection.load.porch.voltage": "28.59 V"}, "about": "protection.load.porch", "verdict": "breaks"},
	"an AC load's breaker": {"design": "meets", "facts": {}, "about": "protection.load.freezer", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, protection_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
