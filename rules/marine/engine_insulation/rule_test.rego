package codebooks.marine.engine_insulation_test

import data.codebooks.marine.engine_insulation

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.charger.main.engine_space": true, "cable_run.charger.main.insulation": "70 degC"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"cable_run.charger.main.engine_space": true, "cable_run.charger.main.insulation": "70.07 degC"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.engine_space": true, "cable_run.charger.main.insulation": "69.93 degC"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.charger.main.engine_space": true, "cable_run.charger.main.insulation": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"elsewhere": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "60 degC", "cable_run.charger.main.engine_space": false}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"unknown cable_run.charger.main.engine_space": {"design": "meets", "facts": {"cable_run.charger.main.engine_space": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, engine_insulation.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
