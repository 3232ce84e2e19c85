package codebooks.marine.device_voltage_test

import data.codebooks.marine.device_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.bus_voltage": "80 V"}, "about": "protection.charger.main", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"protection.charger.main.bus_voltage": "79.92 V"}, "about": "protection.charger.main", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"protection.charger.main.bus_voltage": "80.08 V"}, "about": "protection.charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"protection.charger.main.bus_voltage": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"unknown protection.charger.main.voltage": {"design": "meets", "facts": {"protection.charger.main.voltage": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"on the AC side": {"design": "meets", "facts": {"protection.load.socket.voltage": null}, "about": "protection.load.socket", "verdict": "does_not_apply"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "protection.charger.main", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "protection.charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, device_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
