package codebooks.us_2023.interrupting_test

import data.codebooks.us_2023.interrupting

# Three batteries of 2.4 kA give 7.2 kA: check value H.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"protection.bank.house.fault_current": "20000 A"}, "about": "protection.bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"protection.bank.house.fault_current": "19998 A"}, "about": "protection.bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"protection.bank.house.fault_current": "20002 A"}, "about": "protection.bank.house", "verdict": "breaks"},
	"on the AC side": {"design": "meets", "facts": {}, "about": "protection.load.pump", "verdict": "does_not_apply"},
	"bank of 7.2 kA, breaker without a mark at 5 kA": {"design": "meets", "facts": {"protection.charger.main.fault_current": "7.2 kA", "protection.charger.main.interrupts": "5 kA"}, "about": "protection.charger.main", "verdict": "breaks"},
	"unknown protection.bank.house.interrupts": {"design": "meets", "facts": {"protection.bank.house.interrupts": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"unknown battery.mesa-100.short_circuit_current": {"design": "meets", "facts": {"battery.mesa-100.short_circuit_current": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.bank.house", "verdict": "does_not_apply"},
	"on a boat, protection.array.south": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, interrupting.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
