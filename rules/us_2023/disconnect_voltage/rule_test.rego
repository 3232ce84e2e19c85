package codebooks.us_2023.disconnect_voltage_test

import data.codebooks.us_2023.disconnect_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"PV side: exactly at the limit": {"design": "meets", "facts": {"disconnect.array.south.voltage": "250 V", "string.south.a.voc_cold": "250 V"}, "about": "disconnect.array.south", "verdict": "meets"},
	"PV side: a step below": {"design": "meets", "facts": {"disconnect.array.south.voltage": "250 V", "string.south.a.voc_cold": "249.975 V"}, "about": "disconnect.array.south", "verdict": "meets"},
	"PV side: a step above": {"design": "meets", "facts": {"disconnect.array.south.voltage": "250 V", "string.south.a.voc_cold": "250.025 V"}, "about": "disconnect.array.south", "verdict": "breaks"},
	"bank side: exactly at the limit": {"design": "meets", "facts": {"disconnect.bank.house.voltage": "60 V", "disconnect.bank.house.bus_voltage": "60 V"}, "about": "disconnect.bank.house", "verdict": "meets"},
	"bank side: a step below": {"design": "meets", "facts": {"disconnect.bank.house.voltage": "60 V", "disconnect.bank.house.bus_voltage": "59.994 V"}, "about": "disconnect.bank.house", "verdict": "meets"},
	"bank side: a step above": {"design": "meets", "facts": {"disconnect.bank.house.voltage": "60 V", "disconnect.bank.house.bus_voltage": "60.006 V"}, "about": "disconnect.bank.house", "verdict": "breaks"},
	"by table at -20 degC: 1.18 x 121.5 V": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "disconnect.array.south.voltage": "143.37 V"}, "about": "disconnect.array.south", "verdict": "meets"},
	"by table, a step less": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "disconnect.array.south.voltage": "143.36 V"}, "about": "disconnect.array.south", "verdict": "breaks"},
	"on the AC side": {"design": "meets", "facts": {}, "about": "disconnect.load.pump", "verdict": "does_not_apply"},
	"a vehicle's bank side": {"design": "meets", "facts": {"site.place": "vehicle"}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
	"a vehicle's PV side": {"design": "meets", "facts": {"site.place": "vehicle"}, "about": "disconnect.array.south", "verdict": "meets"},
	"unknown disconnect.array.south.voltage": {"design": "meets", "facts": {"disconnect.array.south.voltage": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"unknown string.south.a.voc_cold": {"design": "meets", "facts": {"string.south.a.voc_cold": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.array.south", "verdict": "does_not_apply"},
	"on a boat, disconnect.bank.house": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
