package codebooks.marine.ignition_switch_test

import data.codebooks.marine.ignition_switch

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"protected": {"design": "meets", "facts": {}, "about": "disconnect.bank.house", "verdict": "meets"},
	"not protected": {"design": "meets", "facts": {"disconnect.bank.house.declared.marine.ignition_protected": false}, "about": "disconnect.bank.house", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"disconnect.bank.house.declared.marine.ignition_protected": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
	"no petrol aboard, all else unknown": {"design": "meets", "facts": {"site.declared.marine.petrol": false, "disconnect.bank.house.declared.marine.petrol_space": null, "disconnect.bank.house.declared.marine.ignition_protected": null}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
	"petrol aboard unknown": {"design": "meets", "facts": {"site.declared.marine.petrol": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
	"elsewhere": {"design": "meets", "facts": {"disconnect.bank.house.declared.marine.petrol_space": false, "disconnect.bank.house.declared.marine.ignition_protected": false}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
	"where it stands unknown": {"design": "meets", "facts": {"disconnect.bank.house.declared.marine.petrol_space": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, ignition_switch.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
