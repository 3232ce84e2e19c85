package codebooks.limits.protection_carries_test

import data.codebooks.limits.protection_carries

# Published (recomputed): an inverter of 2500 W at 22 V and 85 % takes 133.7 A; times 1.25 that is
# 167.1 A. The design that meets has it.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"2500 W at 22 V and 85 %, 167.2 A": {"design": "meets", "facts": {"protection.ac_output.cabin.rating": "167.2 A"}, "about": "protection.ac_output.cabin", "which": "for hours", "verdict": "does_not_apply"},
	"2500 W at 22 V and 85 %, 167.0 A": {"design": "meets", "facts": {"protection.ac_output.cabin.rating": "167.0 A", "protection.ac_output.cabin.continuous_rated": false}, "about": "protection.ac_output.cabin", "which": "for hours", "verdict": "breaks"},
	"2500 W at 22 V and 85 %, 133.7 A": {"design": "meets", "facts": {"protection.ac_output.cabin.rating": "133.7 A"}, "about": "protection.ac_output.cabin", "which": "current", "verdict": "meets"},
	"2500 W at 22 V and 85 %, 133.6 A": {"design": "meets", "facts": {"protection.ac_output.cabin.rating": "133.6 A"}, "about": "protection.ac_output.cabin", "which": "current", "verdict": "breaks"},
	"current: exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.rating": "70 A"}, "about": "protection.charger.main", "which": "current", "verdict": "meets"},
	"current: a step above": {"design": "meets", "facts": {"protection.charger.main.rating": "70.007 A"}, "about": "protection.charger.main", "which": "current", "verdict": "meets"},
	"current: a step below": {"design": "meets", "facts": {"protection.charger.main.rating": "69.993 A"}, "about": "protection.charger.main", "which": "current", "verdict": "breaks"},
	"current: unknown": {"design": "meets", "facts": {"protection.charger.main.rating": null}, "about": "protection.charger.main", "which": "current", "verdict": "unproven"},
	"exactly a quarter above": {"design": "meets", "facts": {"protection.charger.main.rating": "87.5 A"}, "about": "protection.charger.main", "which": "for hours", "verdict": "does_not_apply"},
	"a step less, rated for ever": {"design": "meets", "facts": {"protection.charger.main.rating": "87.4 A", "protection.charger.main.continuous_rated": true}, "about": "protection.charger.main", "which": "for hours", "verdict": "meets"},
	"a step less, not rated for ever": {"design": "meets", "facts": {"protection.charger.main.rating": "87.4 A", "protection.charger.main.continuous_rated": false}, "about": "protection.charger.main", "which": "for hours", "verdict": "breaks"},
	"exactly the current, not rated for ever": {"design": "meets", "facts": {"protection.charger.main.rating": "70 A", "protection.charger.main.continuous_rated": false}, "about": "protection.charger.main", "which": "for hours", "verdict": "breaks"},
	"a step less, silent": {"design": "meets", "facts": {"protection.charger.main.rating": "87.4 A"}, "about": "protection.charger.main", "which": "for hours", "verdict": "unproven"},
	"too small outright": {"design": "meets", "facts": {"protection.charger.main.rating": "69 A"}, "about": "protection.charger.main", "which": "for hours", "verdict": "does_not_apply"},
	"unknown protection.charger.main.current": {"design": "meets", "facts": {"protection.charger.main.current": null}, "about": "protection.charger.main", "which": "current", "verdict": "unproven"},
	"three strings of 10.4 A: 1.5625 x 31.2 A is 48.75 A": {"design": "meets", "facts": {"protection.array.south.rating": "48.75 A"}, "about": "protection.array.south", "which": "for hours", "verdict": "does_not_apply"},
	"three strings of 10.4 A: a step less, silent": {"design": "meets", "facts": {"protection.array.south.rating": "48.7 A"}, "about": "protection.array.south", "which": "for hours", "verdict": "unproven"},
	"three strings of 10.4 A: 39 A at cloud edges": {"design": "meets", "facts": {"protection.array.south.rating": "39 A"}, "about": "protection.array.south", "which": "current", "verdict": "meets"},
	"three strings of 10.4 A: 38.9 A is too small outright": {"design": "meets", "facts": {"protection.array.south.rating": "38.9 A"}, "about": "protection.array.south", "which": "current", "verdict": "breaks"},
	"a string of 10.4 A: limits.string_fuse_carries asks more": {"design": "meets", "facts": {"protection.string.south.a.rating": "13 A"}, "about": "protection.string.south.a", "which": "for hours", "verdict": "does_not_apply"},
	"three strings of 10.4 A: the strings' current counts, not the fault's": {"design": "meets", "facts": {"protection.array.south.fault_current": "20 A", "protection.array.south.rating": "38.9 A"}, "about": "protection.array.south", "which": "current", "verdict": "breaks"},
	"each: exactly at the limit": {"design": "meets", "facts": {"protection.bank.house.each.current": "40 A", "protection.bank.house.each.rating": "40 A"}, "about": "protection.bank.house.each", "which": "current", "verdict": "meets"},
	"each: a step above": {"design": "meets", "facts": {"protection.bank.house.each.current": "40 A", "protection.bank.house.each.rating": "40.004 A"}, "about": "protection.bank.house.each", "which": "current", "verdict": "meets"},
	"each: a step below": {"design": "meets", "facts": {"protection.bank.house.each.current": "40 A", "protection.bank.house.each.rating": "39.996 A"}, "about": "protection.bank.house.each", "which": "current", "verdict": "breaks"},
	"each: unknown": {"design": "meets", "facts": {"protection.bank.house.each.current": "40 A", "protection.bank.house.each.rating": null}, "about": "protection.bank.house.each", "which": "current", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, protection_carries.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What the verdict shows beside its yes or no.
test_also if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, protection_carries.check, {"protection.charger.main.rating": "100 A", "protection.charger.main.current": "90 A"}) with input as system
	[[100, 112.5]] == [v.also | some v in verdicts; v.about == "protection.charger.main"; v.which == "for hours"]
}
