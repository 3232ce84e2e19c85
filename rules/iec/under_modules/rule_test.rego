package codebooks.iec.under_modules_test

import data.codebooks.iec.under_modules

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"4 mm2 pair: 44 x 0.7071 x 0.58 / 0.71: a step inside": {"design": "meets", "facts": {"protection.string.south.a.rating": "25.3492 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"4 mm2 pair: 44 x 0.7071 x 0.58 / 0.71: a step beyond": {"design": "meets", "facts": {"protection.string.south.a.rating": "25.4508 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"4 mm2 pair: 44 x 0.7071 x 0.58 / 0.71: unknown": {"design": "meets", "facts": {"protection.string.south.a.rating": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"4 mm2 at 25.415 A": {"design": "meets", "facts": {"protection.string.south.a.rating": "25.415 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"4 mm2 at 25.417 A": {"design": "meets", "facts": {"protection.string.south.a.rating": "25.417 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"hotter air than 70 degC counts as it is": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "75 degC", "protection.string.south.a.rating": "22 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"conductor at 120 degC: 40.48 A": {"design": "meets", "facts": {"param.iec.pv_conductor_max": "120 degC", "protection.string.south.a.rating": "40.48 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"array's in conduit, 16 mm2: 58 A": {"design": "meets", "facts": {"cable_run.array.south.declared.iec.under_modules": true, "protection.array.south.rating": "58 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"array's in conduit: a step beyond": {"design": "meets", "facts": {"cable_run.array.south.declared.iec.under_modules": true, "protection.array.south.rating": "58.01 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"PVC ends at 60 degC: the maker is asked": {"design": "meets", "facts": {"cable_run.array.south.declared.iec.under_modules": true, "cable_run.array.south.insulation": "70 degC", "cable_run.array.south.current": "20 A", "protection.array.south.rating": "30 A"}, "about": "cable_run.array.south", "verdict": "unproven"},
	"PVC ends at 60 degC: 40 A is more than 76 x 0.5 even there": {"design": "meets", "facts": {"cable_run.array.south.declared.iec.under_modules": true, "cable_run.array.south.insulation": "70 degC"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"not under panels": {"design": "meets", "facts": {}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"silent": {"design": "meets", "facts": {"cable_run.string.south.a.declared.iec.under_modules": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"bank's side": {"design": "meets", "facts": {}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, under_modules.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
