package codebooks.iec.pv_drop_test

import data.codebooks.iec.pv_drop

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.path_drop": "3 %"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"cable_run.array.south.path_drop": "2.997 %"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"cable_run.array.south.path_drop": "3.003 %"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.array.south.path_drop": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"bank's side": {"design": "meets", "facts": {}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"unknown cable_run.array.south.length": {"design": "meets", "facts": {"cable_run.array.south.length": null}, "about": "cable_run.array.south", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, pv_drop.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
