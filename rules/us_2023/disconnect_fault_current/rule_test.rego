package codebooks.us_2023.disconnect_fault_current_test

import data.codebooks.us_2023.disconnect_fault_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.bank.house.fault_current_near": "10000 A"}, "about": "disconnect.bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"cable_run.bank.house.fault_current_near": "9999 A"}, "about": "disconnect.bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"cable_run.bank.house.fault_current_near": "10001 A"}, "about": "disconnect.bank.house", "verdict": "breaks"},
	"on the AC side": {"design": "meets", "facts": {}, "about": "disconnect.load.pump", "verdict": "does_not_apply"},
	"on the AC side without conductor": {"design": "breaks", "facts": {}, "about": "disconnect.load.pump", "verdict": "does_not_apply"},
	"no conductor beside it": {"design": "breaks", "facts": {}, "about": "disconnect.array.south", "verdict": "breaks"},
	"three batteries of 4 kA": {"design": "meets", "facts": {"battery.mesa-100.short_circuit_current": "4 kA"}, "about": "disconnect.bank.house", "verdict": "breaks"},
	"unknown disconnect.bank.house.declared.us_2023.fault_current": {"design": "meets", "facts": {"disconnect.bank.house.declared.us_2023.fault_current": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
	"unknown battery.mesa-100.short_circuit_current": {"design": "meets", "facts": {"battery.mesa-100.short_circuit_current": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
	"on a boat, disconnect.array.south": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_fault_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
