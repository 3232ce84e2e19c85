package codebooks.limits.first_device_test

import data.codebooks.limits.first_device

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"protection.bank.house.distance": "0.3 m"}, "about": "protection.bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"protection.bank.house.distance": "0.299 m"}, "about": "protection.bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"protection.bank.house.distance": "0.301 m"}, "about": "protection.bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"protection.bank.house.distance": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"unknown protection.charger.main.distance": {"design": "meets", "facts": {"protection.charger.main.distance": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"PV side": {"design": "meets", "facts": {}, "about": "protection.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, first_device.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# A fuse of a load that a converter feeds is none of the bank's.
test_behind_a_converter if {
	system := test.facts("meets")
	radio := [l | some l in system.loads; l.id == "load.radio"]
	moved := object.union(system, {"protections": [object.union(p, {"loads": radio}) | some p in system.protections; p.id == "protection.load.lights"]})
	verdicts := test.verdicts(moved, first_device.check, {}) with input as moved
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "protection.load.lights"]
}
