package codebooks.limits.interrupting_test

import data.codebooks.limits.interrupting

# Published: three strings of batteries of 2.4 kA each give 7.2 kA; batteries in series add none. The
# design that meets has them.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"main: exactly at the limit": {"design": "meets", "facts": {"protection.bank.house.fault_current": "20000 A"}, "about": "protection.bank.house", "verdict": "meets"},
	"main: a step below": {"design": "meets", "facts": {"protection.bank.house.fault_current": "19998 A"}, "about": "protection.bank.house", "verdict": "meets"},
	"main: a step above": {"design": "meets", "facts": {"protection.bank.house.fault_current": "20002 A"}, "about": "protection.bank.house", "verdict": "breaks"},
	"main: unknown": {"design": "meets", "facts": {"protection.bank.house.fault_current": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"a load's: exactly at the limit": {"design": "meets", "facts": {"protection.load.lights.fault_current": "10000 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"a load's: a step below": {"design": "meets", "facts": {"protection.load.lights.fault_current": "9999 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"a load's: a step above": {"design": "meets", "facts": {"protection.load.lights.fault_current": "10001 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"a load's: unknown": {"design": "meets", "facts": {"protection.load.lights.fault_current": null}, "about": "protection.load.lights", "verdict": "unproven"},
	"PV side: exactly at the limit": {"design": "meets", "facts": {"protection.array.south.fault_current": "6000 A"}, "about": "protection.array.south", "verdict": "meets"},
	"PV side: a step below": {"design": "meets", "facts": {"protection.array.south.fault_current": "5999.4 A"}, "about": "protection.array.south", "verdict": "meets"},
	"PV side: a step above": {"design": "meets", "facts": {"protection.array.south.fault_current": "6000.6 A"}, "about": "protection.array.south", "verdict": "breaks"},
	"PV side: unknown": {"design": "meets", "facts": {"protection.array.south.fault_current": null}, "about": "protection.array.south", "verdict": "unproven"},
	"unknown protection.bank.house.interrupts": {"design": "meets", "facts": {"protection.bank.house.interrupts": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"three strings of 2.4 kA on 7.2 kA": {"design": "meets", "facts": {"protection.charger.main.interrupts": "7.2 kA"}, "about": "protection.charger.main", "verdict": "meets"},
	"three strings of 2.4 kA on 7.19 kA": {"design": "meets", "facts": {"protection.charger.main.interrupts": "7.19 kA"}, "about": "protection.charger.main", "verdict": "breaks"},
	"a load on load terminals": {"design": "meets", "facts": {}, "about": "protection.load.porch", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, interrupting.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# A device behind an inverter is for alternating current.
test_behind_an_inverter if {
	system := test.facts("meets")
	pump := [l | some l in system.loads; l.id == "load.pump"]
	moved := object.union(system, {"protections": [object.union(p, {"loads": pump}) | some p in system.protections; p.id == "protection.load.lights"]})
	verdicts := test.verdicts(moved, interrupting.check, {}) with input as moved
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "protection.load.lights"]
}
