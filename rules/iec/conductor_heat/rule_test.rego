package codebooks.iec.conductor_heat_test

import data.codebooks.iec.conductor_heat

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly 10 K above the air": {"design": "meets", "facts": {"cable_run.bank.house.ambient": "80 degC"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"a step hotter": {"design": "meets", "facts": {"cable_run.bank.house.ambient": "80.05 degC"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"a step cooler": {"design": "meets", "facts": {"cable_run.bank.house.ambient": "79.95 degC"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"PVC in 60 degC": {"design": "meets", "facts": {"cable_run.bank.house.insulation": "70 degC", "cable_run.bank.house.ambient": "60 degC"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"PVC in 65 degC, whatever its maker's ampacity": {"design": "meets", "facts": {"cable_run.bank.house.insulation": "70 degC", "cable_run.bank.house.ambient": "65 degC", "cable_run.bank.house.ampacity": "400 A"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"insulation silent": {"design": "meets", "facts": {"cable_run.bank.house.insulation": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
	"air silent": {"design": "meets", "facts": {"cable_run.bank.house.ambient": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
	"how it is laid silent": {"design": "meets", "facts": {"cable_run.bank.house.method": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
	"in the ground": {"design": "meets", "facts": {"cable_run.bank.house.method": "direct_buried", "cable_run.bank.house.ambient": null}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"in a duct in the ground": {"design": "meets", "facts": {"cable_run.bank.house.method": "buried", "cable_run.bank.house.ambient": null}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"PVC under panels": {"design": "meets", "facts": {"cable_run.string.south.a.insulation": "70 degC"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"79.5 degC under panels": {"design": "meets", "facts": {"cable_run.string.south.a.insulation": "79.5 degC"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"79.5 degC, under panels or not": {"design": "meets", "facts": {"cable_run.string.south.a.insulation": "79.5 degC", "cable_run.string.south.a.declared.iec.under_modules": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"80 degC, under panels or not": {"design": "meets", "facts": {"cable_run.string.south.a.insulation": "80 degC", "cable_run.string.south.a.declared.iec.under_modules": null}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"120 degC in 111 degC of air under panels": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "111 degC"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"PVC not under panels, 55 degC": {"design": "meets", "facts": {"cable_run.array.south.insulation": "70 degC", "cable_run.array.south.ambient": "55 degC"}, "about": "cable_run.array.south", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_heat.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
