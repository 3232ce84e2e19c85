package codebooks.marine.ignition_test

import data.codebooks.marine.ignition

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"protected": {"design": "meets", "facts": {}, "about": "protection.charge_source.engine", "verdict": "meets"},
	"not protected": {"design": "meets", "facts": {"protection.charge_source.engine.declared.marine.ignition_protected": false}, "about": "protection.charge_source.engine", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"protection.charge_source.engine.declared.marine.ignition_protected": null}, "about": "protection.charge_source.engine", "verdict": "unproven"},
	"no petrol aboard, all else unknown": {"design": "meets", "facts": {"site.declared.marine.petrol": false, "protection.charge_source.engine.declared.marine.petrol_space": null, "protection.charge_source.engine.declared.marine.ignition_protected": null}, "about": "protection.charge_source.engine", "verdict": "does_not_apply"},
	"petrol aboard unknown": {"design": "meets", "facts": {"site.declared.marine.petrol": null}, "about": "protection.charge_source.engine", "verdict": "unproven"},
	"elsewhere": {"design": "meets", "facts": {"protection.charge_source.engine.declared.marine.petrol_space": false, "protection.charge_source.engine.declared.marine.ignition_protected": false}, "about": "protection.charge_source.engine", "verdict": "does_not_apply"},
	"where it stands unknown": {"design": "meets", "facts": {"protection.charge_source.engine.declared.marine.petrol_space": null}, "about": "protection.charge_source.engine", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "protection.charge_source.engine", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "protection.charge_source.engine", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, ignition.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
