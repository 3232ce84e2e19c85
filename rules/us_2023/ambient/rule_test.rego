package codebooks.us_2023.ambient_test

import data.codebooks.us_2023.ambient

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"36 degC less 5 K, exactly": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "31 degC"}, "about": "cable_run.string.south.a", "which": "outside", "verdict": "meets"},
	"a step cooler": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "30.9 degC"}, "about": "cable_run.string.south.a", "which": "outside", "verdict": "breaks"},
	"another figure of the workshop": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "31 degC", "param.us_2023.ambient_below_hottest": "0 K"}, "about": "cable_run.string.south.a", "which": "outside", "verdict": "breaks"},
	"inside": {"design": "meets", "facts": {"cable_run.array.south.ambient": "20 degC"}, "about": "cable_run.array.south", "which": "outside", "verdict": "does_not_apply"},
	"inside and on the roof": {"design": "meets", "facts": {"cable_run.array.south.ambient": "20 degC", "cable_run.array.south.declared.us_2023.on_roof": true}, "about": "cable_run.array.south", "which": "outside", "verdict": "breaks"},
	"outside, no roof": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "20 degC", "cable_run.string.south.a.declared.us_2023.on_roof": false}, "about": "cable_run.string.south.a", "which": "outside", "verdict": "breaks"},
	"below ground": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "20 degC", "cable_run.string.south.a.method": "direct_buried"}, "about": "cable_run.string.south.a", "which": "outside", "verdict": "does_not_apply"},
	"in a raceway below ground": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "20 degC", "cable_run.string.south.a.method": "buried"}, "about": "cable_run.string.south.a", "which": "outside", "verdict": "does_not_apply"},
	"ambient unknown": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": null}, "about": "cable_run.string.south.a", "which": "outside", "verdict": "unproven"},
	"hottest unknown": {"design": "meets", "facts": {"site.hottest": null}, "about": "cable_run.string.south.a", "which": "outside", "verdict": "unproven"},
	"inside or not unknown": {"design": "meets", "facts": {"cable_run.charger.main.indoors": null}, "about": "cable_run.charger.main", "which": "outside", "verdict": "unproven"},
	"a charger's, inside": {"design": "meets", "facts": {}, "about": "cable_run.charger.main", "which": "outside", "verdict": "does_not_apply"},
	"a charger's, outside": {"design": "meets", "facts": {"cable_run.charger.main.indoors": false, "cable_run.charger.main.ambient": "20 degC"}, "about": "cable_run.charger.main", "which": "outside", "verdict": "breaks"},
	"at the charger, exactly": {"design": "meets", "facts": {}, "about": "cable_run.charger.main", "which": "beside its equipment", "verdict": "meets"},
	"at the charger, a step cooler": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "34.9 degC"}, "about": "cable_run.charger.main", "which": "beside its equipment", "verdict": "breaks"},
	"at the charger, unknown": {"design": "meets", "facts": {"charger.main.hottest": null}, "about": "cable_run.charger.main", "which": "beside its equipment", "verdict": "unproven"},
	"at the bank, exactly": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "which": "beside its equipment", "verdict": "meets"},
	"at the bank, a step cooler": {"design": "meets", "facts": {"cable_run.bank.house.ambient": "34.9 degC"}, "about": "cable_run.bank.house", "which": "beside its equipment", "verdict": "breaks"},
	"at the bank, on a boat": {"design": "meets", "facts": {"cable_run.bank.house.ambient": "20 degC", "site.place": "boat"}, "about": "cable_run.bank.house", "which": "beside its equipment", "verdict": "does_not_apply"},
	"on a boat": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "20 degC", "site.place": "boat"}, "about": "cable_run.string.south.a", "which": "outside", "verdict": "does_not_apply"},
	"in a vehicle, the PV side": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "20 degC", "site.place": "vehicle"}, "about": "cable_run.string.south.a", "which": "outside", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, ambient.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
