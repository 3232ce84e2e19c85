package codebooks.iec.branch_drop_test

import data.codebooks.iec.branch_drop

# Worked by Annex G: 40 A, 14 m, 16 mm2, 0.0225 ohm mm2/m: 1.575 V, 6.56 % of 24 V and 3.28 % of 48 V.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a lamp: exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "6 %"}, "about": "load.lights", "verdict": "meets"},
	"a lamp: a step inside": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "5.994 %"}, "about": "load.lights", "verdict": "meets"},
	"a lamp: a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "6.006 %"}, "about": "load.lights", "verdict": "breaks"},
	"a lamp: unknown": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": null}, "about": "load.lights", "verdict": "unproven"},
	"another load: exactly at the limit": {"design": "meets", "facts": {"load.lights.declared.iec.lighting": false, "cable_run.load.lights.path_drop": "8 %"}, "about": "load.lights", "verdict": "meets"},
	"another load: a step inside": {"design": "meets", "facts": {"load.lights.declared.iec.lighting": false, "cable_run.load.lights.path_drop": "7.992 %"}, "about": "load.lights", "verdict": "meets"},
	"another load: a step beyond": {"design": "meets", "facts": {"load.lights.declared.iec.lighting": false, "cable_run.load.lights.path_drop": "8.008 %"}, "about": "load.lights", "verdict": "breaks"},
	"another load: unknown": {"design": "meets", "facts": {"load.lights.declared.iec.lighting": false, "cable_run.load.lights.path_drop": null}, "about": "load.lights", "verdict": "unproven"},
	"silent, enough for a lamp": {"design": "meets", "facts": {"load.lights.declared.iec.lighting": null}, "about": "load.lights", "verdict": "meets"},
	"silent, between the two": {"design": "meets", "facts": {"load.lights.declared.iec.lighting": null, "cable_run.load.lights.path_drop": "7 %"}, "about": "load.lights", "verdict": "unproven"},
	"silent, beyond both": {"design": "meets", "facts": {"load.lights.declared.iec.lighting": null, "cable_run.load.lights.path_drop": "8.01 %"}, "about": "load.lights", "verdict": "breaks"},
	"140 m: 0.2 % more": {"design": "meets", "facts": {"cable_run.load.lights.length": "140 m", "cable_run.load.lights.path_drop": "6.2 %"}, "about": "load.lights", "verdict": "meets"},
	"140 m: a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.length": "140 m", "cable_run.load.lights.path_drop": "6.21 %"}, "about": "load.lights", "verdict": "breaks"},
	"250 m: 0.5 % more": {"design": "meets", "facts": {"cable_run.load.lights.length": "250 m", "cable_run.load.lights.path_drop": "6.5 %"}, "about": "load.lights", "verdict": "meets"},
	"250 m: 0.5 % more, no further": {"design": "meets", "facts": {"cable_run.load.lights.length": "250 m", "cable_run.load.lights.path_drop": "6.51 %"}, "about": "load.lights", "verdict": "breaks"},
	"40 A, 14 m, 16 mm2 on 24 V: 6.56 %": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "6.56 %"}, "about": "load.lights", "verdict": "breaks"},
	"the same on 48 V: 3.28 %": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "3.28 %"}, "about": "load.lights", "verdict": "meets"},
	"the same on 48 V, public supply": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "3.28 %", "param.iec.lighting_drop_max": "3 %"}, "about": "load.lights", "verdict": "breaks"},
	"no conductors": {"design": "meets", "facts": {}, "about": "load.pump", "verdict": "does_not_apply"},
	"140 m: 6.201 % is beyond": {"design": "meets", "facts": {"cable_run.load.lights.length": "140 m", "cable_run.load.lights.path_drop": "6.201 %"}, "about": "load.lights", "verdict": "breaks"},
	"100.5 m: 0.0025 % more": {"design": "meets", "facts": {"cable_run.load.lights.length": "100.5 m", "cable_run.load.lights.path_drop": "6.002 %"}, "about": "load.lights", "verdict": "meets"},
	"100.5 m: a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.length": "100.5 m", "cable_run.load.lights.path_drop": "6.003 %"}, "about": "load.lights", "verdict": "breaks"},
	"99.5 m: nothing less": {"design": "meets", "facts": {"cable_run.load.lights.length": "99.5 m", "cable_run.load.lights.path_drop": "6 %"}, "about": "load.lights", "verdict": "meets"},
	"250 m: 6.501 % is beyond": {"design": "meets", "facts": {"cable_run.load.lights.length": "250 m", "cable_run.load.lights.path_drop": "6.501 %"}, "about": "load.lights", "verdict": "breaks"},
	"silent, 140 m, enough for a lamp": {"design": "meets", "facts": {"cable_run.load.lights.length": "140 m", "cable_run.load.lights.path_drop": "6.2 %", "load.lights.declared.iec.lighting": null}, "about": "load.lights", "verdict": "meets"},
	"silent, 140 m, a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.length": "140 m", "cable_run.load.lights.path_drop": "6.201 %", "load.lights.declared.iec.lighting": null}, "about": "load.lights", "verdict": "unproven"},
	"enough for a lamp where other loads bear less": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "5.5 %", "param.iec.other_drop_max": "5 %"}, "about": "load.lights", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, branch_drop.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
