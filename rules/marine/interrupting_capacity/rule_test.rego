package codebooks.marine.interrupting_capacity_test

import data.codebooks.marine.interrupting_capacity

# Published: batteries side by side add, in series they do not: three strings of 2.4 kA give 7.2 kA. Exactly 500 Ah:
# the table; 501 Ah with 10.0 kA: a 10 kA device meets; 10.1 kA: 20 kA at 125 V is due.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"10 kA on a device of 10 kA: exactly at the limit": {"design": "meets", "facts": {"protection.bank.house.interrupts": "10 kA", "bank.house.short_circuit_current": "10 kA"}, "about": "protection.bank.house", "which": "capacity", "verdict": "meets"},
	"10 kA on a device of 10 kA: a step inside": {"design": "meets", "facts": {"protection.bank.house.interrupts": "10 kA", "bank.house.short_circuit_current": "9.9 kA"}, "about": "protection.bank.house", "which": "capacity", "verdict": "meets"},
	"10 kA on a device of 10 kA: a step beyond": {"design": "meets", "facts": {"protection.bank.house.interrupts": "10 kA", "bank.house.short_circuit_current": "10.1 kA"}, "about": "protection.bank.house", "which": "capacity", "verdict": "breaks"},
	"10 kA on a device of 10 kA: unknown": {"design": "meets", "facts": {"protection.bank.house.interrupts": "10 kA", "bank.house.short_circuit_current": null}, "about": "protection.bank.house", "which": "capacity", "verdict": "unproven"},
	"10.1 kA, 20 kA and 125 V: capacity": {"design": "meets", "facts": {"bank.house.short_circuit_current": "10.1 kA"}, "about": "protection.bank.house", "which": "capacity", "verdict": "meets"},
	"10.1 kA: 19.9 kA": {"design": "meets", "facts": {"bank.house.short_circuit_current": "10.1 kA", "protection.bank.house.interrupts": "19.9 kA"}, "about": "protection.bank.house", "which": "capacity", "verdict": "breaks"},
	"10.1 kA: 125 V": {"design": "meets", "facts": {"bank.house.short_circuit_current": "10.1 kA"}, "about": "protection.bank.house", "which": "voltage", "verdict": "meets"},
	"10.1 kA: 124 V": {"design": "meets", "facts": {"bank.house.short_circuit_current": "10.1 kA", "protection.bank.house.voltage": "124 V"}, "about": "protection.bank.house", "which": "voltage", "verdict": "breaks"},
	"10.0 kA: no 125 V": {"design": "meets", "facts": {"bank.house.short_circuit_current": "10 kA", "protection.bank.house.voltage": "58 V"}, "about": "protection.bank.house", "which": "voltage", "verdict": "does_not_apply"},
	"three strings of 2.4 kA: 7.2 kA": {"design": "meets", "facts": {"battery.peat-100.short_circuit_current": "2.4 kA", "protection.bank.house.interrupts": "7.2 kA"}, "about": "protection.bank.house", "which": "capacity", "verdict": "meets"},
	"three strings of 2.4 kA: 7.19 kA": {"design": "meets", "facts": {"battery.peat-100.short_circuit_current": "2.4 kA", "protection.bank.house.interrupts": "7.19 kA"}, "about": "protection.bank.house", "which": "capacity", "verdict": "breaks"},
	"lead, 650 A: 1500 A": {"design": "meets", "facts": {"protection.bank.start.interrupts": "1500 A"}, "about": "protection.bank.start", "which": "capacity", "verdict": "meets"},
	"lead, 650 A: 1499 A": {"design": "meets", "facts": {"protection.bank.start.interrupts": "1499 A"}, "about": "protection.bank.start", "which": "capacity", "verdict": "breaks"},
	"lead, 651 A: 1500 A": {"design": "meets", "facts": {"bank.start.declared.marine.cold_cranking": "651 A", "protection.bank.start.interrupts": "1500 A"}, "about": "protection.bank.start", "which": "capacity", "verdict": "breaks"},
	"lead, 1100 A: 3000 A": {"design": "meets", "facts": {"bank.start.declared.marine.cold_cranking": "1100 A", "protection.bank.start.interrupts": "3000 A"}, "about": "protection.bank.start", "which": "capacity", "verdict": "meets"},
	"lead, 3000 A: 5000 A": {"design": "meets", "facts": {"bank.start.declared.marine.cold_cranking": "3000 A", "protection.bank.start.interrupts": "5000 A"}, "about": "protection.bank.start", "which": "capacity", "verdict": "meets"},
	"lead, 500 Ah: the table": {"design": "meets", "facts": {"bank.start.capacity": "500 Ah", "protection.bank.start.interrupts": "1500 A"}, "about": "protection.bank.start", "which": "capacity", "verdict": "meets"},
	"lead, 501 Ah: the maker's 10.0 kA": {"design": "meets", "facts": {"bank.start.capacity": "501 Ah", "bank.start.short_circuit_current": "10 kA", "protection.bank.start.interrupts": "10 kA"}, "about": "protection.bank.start", "which": "capacity", "verdict": "meets"},
	"lead, 501 Ah: 10.1 kA": {"design": "meets", "facts": {"bank.start.capacity": "501 Ah", "bank.start.short_circuit_current": "10.1 kA", "protection.bank.start.interrupts": "10.1 kA"}, "about": "protection.bank.start", "which": "capacity", "verdict": "breaks"},
	"lead, cranking unknown, 4999 A": {"design": "meets", "facts": {"bank.start.declared.marine.cold_cranking": null, "protection.bank.start.interrupts": "4999 A"}, "about": "protection.bank.start", "which": "capacity", "verdict": "unproven"},
	"lead, cranking unknown, 5000 A": {"design": "meets", "facts": {"bank.start.declared.marine.cold_cranking": null, "protection.bank.start.interrupts": "5000 A"}, "about": "protection.bank.start", "which": "capacity", "verdict": "meets"},
	"interrupts unknown": {"design": "meets", "facts": {"protection.bank.start.interrupts": null}, "about": "protection.bank.start", "which": "capacity", "verdict": "unproven"},
	"a branch of a lithium bank": {"design": "meets", "facts": {}, "about": "protection.charger.main", "which": "branch", "verdict": "does_not_apply"},
	"a branch of a lead bank, 900 A: 1500 A": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded", "protection.charger.main.interrupts": "1500 A"}, "about": "protection.charger.main", "which": "branch", "verdict": "meets"},
	"a branch of a lead bank, 900 A: 1499 A": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded", "protection.charger.main.interrupts": "1499 A"}, "about": "protection.charger.main", "which": "branch", "verdict": "breaks"},
	"a branch, cranking unknown, 2500 A": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded", "bank.house.declared.marine.cold_cranking": null, "protection.charger.main.interrupts": "2500 A"}, "about": "protection.charger.main", "which": "branch", "verdict": "meets"},
	"a branch, cranking unknown, 2499 A": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded", "bank.house.declared.marine.cold_cranking": null, "protection.charger.main.interrupts": "2499 A"}, "about": "protection.charger.main", "which": "branch", "verdict": "unproven"},
	"between batteries": {"design": "meets", "facts": {}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
	"PV side": {"design": "meets", "facts": {}, "about": "protection.array.south", "verdict": "does_not_apply"},
	"not a boat (capacity)": {"design": "meets", "facts": {"site.place": "building"}, "about": "protection.bank.house", "which": "capacity", "verdict": "does_not_apply"},
	"place unknown (capacity)": {"design": "meets", "facts": {"site.place": null}, "about": "protection.bank.house", "which": "capacity", "verdict": "unproven"},
	"lead, 3000 A: 4999 A": {"design": "meets", "facts": {"bank.start.declared.marine.cold_cranking": "3000 A", "protection.bank.start.interrupts": "4999 A"}, "about": "protection.bank.start", "which": "capacity", "verdict": "breaks"},
	"lead, 225 Ah, 10.1 kA: no 125 V": {"design": "meets", "facts": {"bank.start.short_circuit_current": "10.1 kA"}, "about": "protection.bank.start", "which": "voltage", "verdict": "does_not_apply"},
	"not a boat (voltage)": {"design": "meets", "facts": {"site.place": "building", "bank.house.short_circuit_current": "10.1 kA"}, "about": "protection.bank.house", "which": "voltage", "verdict": "does_not_apply"},
	"place unknown (voltage)": {"design": "meets", "facts": {"site.place": null, "bank.house.short_circuit_current": "10.1 kA"}, "about": "protection.bank.house", "which": "voltage", "verdict": "unproven"},
	"not a boat (branch)": {"design": "meets", "facts": {"site.place": "building", "battery.peat-100.chemistry": "flooded"}, "about": "protection.charger.main", "which": "branch", "verdict": "does_not_apply"},
	"place unknown (branch)": {"design": "meets", "facts": {"site.place": null, "battery.peat-100.chemistry": "flooded"}, "about": "protection.charger.main", "which": "branch", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, interrupting_capacity.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What is said of each device: of a main, a branch, and one that is neither.
test_said[about] if {
	some about, owed in {"protection.bank.house": {"capacity", "voltage"}, "protection.charger.main": {"branch"}, "protection.bank.house.each": {null}}
	system := test.facts("meets")
	verdicts := test.verdicts(system, interrupting_capacity.check, {}) with input as system
	owed == {object.get(v, "which", null) | some v in verdicts; v.about == about}
}
