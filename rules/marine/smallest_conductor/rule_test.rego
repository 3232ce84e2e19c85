package codebooks.marine.smallest_conductor_test

import data.codebooks.marine.smallest_conductor

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.size": "1 mm2"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.001 mm2"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.999 mm2"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.load.lights.size": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"in a sheath: exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.sheathed": true, "cable_run.load.lights.size": "0.75 mm2"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"in a sheath: a step inside": {"design": "meets", "facts": {"cable_run.load.lights.sheathed": true, "cable_run.load.lights.size": "0.75075 mm2"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"in a sheath: a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.sheathed": true, "cable_run.load.lights.size": "0.74925 mm2"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"in a sheath: unknown": {"design": "meets", "facts": {"cable_run.load.lights.sheathed": true, "cable_run.load.lights.size": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"16 AWG, ABYC": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.309 mm2", "param.marine.standard": "abyc"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"1 mm2, ABYC": {"design": "meets", "facts": {"cable_run.load.lights.size": "1 mm2", "param.marine.standard": "abyc"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"18 AWG in a sheath, 33 CFR": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.8232 mm2", "cable_run.load.lights.sheathed": true, "param.marine.standard": "cfr"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"0.82 mm2 in a sheath, 33 CFR": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.82 mm2", "cable_run.load.lights.sheathed": true, "param.marine.standard": "cfr"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"1.3 mm2, ABYC": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.3 mm2", "param.marine.standard": "abyc"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"sheath unknown, thin": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.75 mm2", "cable_run.load.lights.sheathed": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"sheath unknown, thick": {"design": "meets", "facts": {"cable_run.load.lights.sheathed": null}, "about": "cable_run.load.lights", "verdict": "meets"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"area of 0.999 mm2": {"design": "meets", "facts": {"cable_run.load.lights.area": "0.999 mm2"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"area of 0.9 mm2 in a sheath": {"design": "meets", "facts": {"cable_run.load.lights.area": "0.9 mm2", "cable_run.load.lights.sheathed": true}, "about": "cable_run.load.lights", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, smallest_conductor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
