package codebooks.marine.drop_test

import data.codebooks.marine.drop

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "10 %"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "9.99 %"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "10.01 %"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"safety hangs on it": {"design": "meets", "facts": {"load.lights.declared.marine.critical": true, "cable_run.load.lights.path_drop": "11 %"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"silent, 10 %": {"design": "meets", "facts": {"load.lights.declared.marine.critical": null, "cable_run.load.lights.path_drop": "10 %"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"silent, above 10 %": {"design": "meets", "facts": {"load.lights.declared.marine.critical": null, "cable_run.load.lights.path_drop": "10.1 %"}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"the bank's": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, drop.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
