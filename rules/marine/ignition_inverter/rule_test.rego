package codebooks.marine.ignition_inverter_test

import data.codebooks.marine.ignition_inverter

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"protected": {"design": "meets", "facts": {}, "about": "ac_output.cabin", "verdict": "meets"},
	"not protected": {"design": "meets", "facts": {"ac_output.cabin.declared.marine.ignition_protected": false}, "about": "ac_output.cabin", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"ac_output.cabin.declared.marine.ignition_protected": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"no petrol aboard, all else unknown": {"design": "meets", "facts": {"site.declared.marine.petrol": false, "ac_output.cabin.declared.marine.petrol_space": null, "ac_output.cabin.declared.marine.ignition_protected": null}, "about": "ac_output.cabin", "verdict": "does_not_apply"},
	"petrol aboard unknown": {"design": "meets", "facts": {"site.declared.marine.petrol": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"elsewhere": {"design": "meets", "facts": {"ac_output.cabin.declared.marine.petrol_space": false, "ac_output.cabin.declared.marine.ignition_protected": false}, "about": "ac_output.cabin", "verdict": "does_not_apply"},
	"where it stands unknown": {"design": "meets", "facts": {"ac_output.cabin.declared.marine.petrol_space": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "ac_output.cabin", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "ac_output.cabin", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, ignition_inverter.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
