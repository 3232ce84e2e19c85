package codebooks.vehicle.bank_poles_test

import data.codebooks.vehicle.bank_poles

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"switch, two poles": {"design": "meets", "facts": {}, "about": "bank.house", "which": "switch", "verdict": "meets"},
	"switch, one pole": {"design": "meets", "facts": {"disconnect.bank.house.poles": 1}, "about": "bank.house", "which": "switch", "verdict": "breaks"},
	"switch, silent": {"design": "meets", "facts": {"disconnect.bank.house.poles": null}, "about": "bank.house", "which": "switch", "verdict": "unproven"},
	"switch, negative bonded, poles unknown": {"design": "meets", "facts": {"grounding.dc": "negative", "disconnect.bank.house.poles": null}, "about": "bank.house", "which": "switch", "verdict": "does_not_apply"},
	"switch, bonds unknown": {"design": "meets", "facts": {"grounding.dc": null}, "about": "bank.house", "which": "switch", "verdict": "unproven"},
	"switch, not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "switch", "verdict": "does_not_apply"},
	"switch, place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "switch", "verdict": "unproven"},
	"device, two poles": {"design": "meets", "facts": {}, "about": "bank.house", "which": "device", "verdict": "meets"},
	"device, one pole": {"design": "meets", "facts": {"protection.bank.house.poles": 1}, "about": "bank.house", "which": "device", "verdict": "breaks"},
	"device, silent": {"design": "meets", "facts": {"protection.bank.house.poles": null}, "about": "bank.house", "which": "device", "verdict": "unproven"},
	"device, negative bonded, poles unknown": {"design": "meets", "facts": {"grounding.dc": "negative", "protection.bank.house.poles": null}, "about": "bank.house", "which": "device", "verdict": "does_not_apply"},
	"device, bonds unknown": {"design": "meets", "facts": {"grounding.dc": null}, "about": "bank.house", "which": "device", "verdict": "unproven"},
	"device, not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "device", "verdict": "does_not_apply"},
	"device, place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "device", "verdict": "unproven"},
	"nothing there": {"design": "meets", "facts": {}, "about": "bank.spare", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_poles.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What is missing is judged elsewhere: what is there, here.
test_one_of_them if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, bank_poles.check, {}) with input as system
	{"switch"} == {object.get(v, "which", "") | some v in verdicts; v.about == "bank.switched"}
	{"device"} == {object.get(v, "which", "") | some v in verdicts; v.about == "bank.fused"}
}
