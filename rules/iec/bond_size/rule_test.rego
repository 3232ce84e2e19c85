package codebooks.iec.bond_size_test

import data.codebooks.iec.bond_size

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"grounding.declared.iec.bond_size": "6 mm2"}, "about": "grounding", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"grounding.declared.iec.bond_size": "6.006 mm2"}, "about": "grounding", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"grounding.declared.iec.bond_size": "5.994 mm2"}, "about": "grounding", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"grounding.declared.iec.bond_size": null}, "about": "grounding", "verdict": "unproven"},
	"with a lightning protection system": {"design": "meets", "facts": {"param.iec.bond_size_min": "16 mm2"}, "about": "grounding", "verdict": "breaks"},
	"not bonded": {"design": "meets", "facts": {"grounding.frames_bonded": false}, "about": "grounding", "verdict": "does_not_apply"},
	"unknown grounding.frames_bonded": {"design": "meets", "facts": {"grounding.frames_bonded": null}, "about": "grounding", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bond_size.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
