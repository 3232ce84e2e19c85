package codebooks.marine.ignition_charger_test

import data.codebooks.marine.ignition_charger

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"protected": {"design": "meets", "facts": {}, "about": "charger.main", "verdict": "meets"},
	"not protected": {"design": "meets", "facts": {"charger.main.declared.marine.ignition_protected": false}, "about": "charger.main", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"charger.main.declared.marine.ignition_protected": null}, "about": "charger.main", "verdict": "unproven"},
	"no petrol aboard, all else unknown": {"design": "meets", "facts": {"site.declared.marine.petrol": false, "charger.main.declared.marine.petrol_space": null, "charger.main.declared.marine.ignition_protected": null}, "about": "charger.main", "verdict": "does_not_apply"},
	"petrol aboard unknown": {"design": "meets", "facts": {"site.declared.marine.petrol": null}, "about": "charger.main", "verdict": "unproven"},
	"elsewhere": {"design": "meets", "facts": {"charger.main.declared.marine.petrol_space": false, "charger.main.declared.marine.ignition_protected": false}, "about": "charger.main", "verdict": "does_not_apply"},
	"where it stands unknown": {"design": "meets", "facts": {"charger.main.declared.marine.petrol_space": null}, "about": "charger.main", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "charger.main", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, ignition_charger.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
