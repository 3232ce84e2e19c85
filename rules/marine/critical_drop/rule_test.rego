package codebooks.marine.critical_drop_test

import data.codebooks.marine.critical_drop

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "3 %"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "2.997 %"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "3.003 %"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"charging: exactly at the limit": {"design": "meets", "facts": {"cable_run.charger.main.path_drop": "3 %"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"charging: a step inside": {"design": "meets", "facts": {"cable_run.charger.main.path_drop": "2.997 %"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"charging: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.path_drop": "3.003 %"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"charging: unknown": {"design": "meets", "facts": {"cable_run.charger.main.path_drop": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"no safety hangs on it": {"design": "meets", "facts": {"load.lights.declared.marine.critical": false, "cable_run.load.lights.path_drop": "5 %"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"silent, 3 %": {"design": "meets", "facts": {"load.lights.declared.marine.critical": null, "cable_run.load.lights.path_drop": "3 %"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"silent, above 3 %": {"design": "meets", "facts": {"load.lights.declared.marine.critical": null, "cable_run.load.lights.path_drop": "3.01 %"}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"0.72 V at 24 V": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "3 %"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"the bank's": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"charging, not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"charging, place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, critical_drop.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
