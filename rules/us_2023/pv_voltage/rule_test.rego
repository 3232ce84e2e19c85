package codebooks.us_2023.pv_voltage_test

import data.codebooks.us_2023.pv_voltage

# Table 690.7(A), check values A1 and A2 (public transcription): 2 x 49.5 V at -27 degC are 112.90 V
# by coefficient and 119.79 V by table; a temperature between two rows takes the colder one.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"string.south.a.voc_cold": "200 V"}, "about": "string.south.a", "which": "by its coefficients", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"string.south.a.voc_cold": "199.98 V"}, "about": "string.south.a", "which": "by its coefficients", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"string.south.a.voc_cold": "200.02 V"}, "about": "string.south.a", "which": "by its coefficients", "verdict": "breaks"},
	"the panels' limit is less: exactly at it": {"design": "meets", "facts": {"string.south.a.voc_cold": "150 V", "panel.sage-330.max_system_voltage": "150 V"}, "about": "string.south.a", "which": "by its coefficients", "verdict": "meets"},
	"the panels' limit is less: a step above it": {"design": "meets", "facts": {"string.south.a.voc_cold": "150.01 V", "panel.sage-330.max_system_voltage": "150 V"}, "about": "string.south.a", "which": "by its coefficients", "verdict": "breaks"},
	"two panels of 49.5 V and -0.27 %/K at -27 degC by coefficient: 112.90 V within 115 V": {"design": "meets", "facts": {"string.south.a.voc_cold": "112.90 V", "controller.butte-60.pv_voltage_max": "115 V"}, "about": "string.south.a", "which": "by its coefficients", "verdict": "meets"},
	"the same by table: 119.79 V": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "string.south.a.voc_stc": "99 V", "site.coldest": "-27 degC", "controller.butte-60.pv_voltage_max": "115 V"}, "about": "string.south.a", "which": "by table", "verdict": "breaks"},
	"the same by table exactly within 119.79 V": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "string.south.a.voc_stc": "99 V", "site.coldest": "-27 degC", "controller.butte-60.pv_voltage_max": "119.79 V"}, "about": "string.south.a", "which": "by table", "verdict": "meets"},
	"by table at -5 degC: 1.12 x 121.5 V": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "site.coldest": "-5 degC", "controller.butte-60.pv_voltage_max": "136.08 V"}, "about": "string.south.a", "which": "by table", "verdict": "meets"},
	"by table at -5.5 degC the colder row: 1.14": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "site.coldest": "-5.5 degC", "controller.butte-60.pv_voltage_max": "136.08 V"}, "about": "string.south.a", "which": "by table", "verdict": "breaks"},
	"by table at -40 degC: 1.25 x 121.5 V": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "site.coldest": "-40 degC", "controller.butte-60.pv_voltage_max": "151.875 V"}, "about": "string.south.a", "which": "by table", "verdict": "meets"},
	"by table at -40 degC, a step above": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "site.coldest": "-40 degC", "controller.butte-60.pv_voltage_max": "151.8 V"}, "about": "string.south.a", "which": "by table", "verdict": "breaks"},
	"below -40 degC the table ends": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "site.coldest": "-40.1 degC"}, "about": "string.south.a", "which": "by table", "verdict": "does_not_apply"},
	"below -40 degC without coefficient": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "string.south.a.voc_cold": null, "site.coldest": "-40.1 degC"}, "about": "string.south.a", "which": "by its coefficients", "verdict": "unproven"},
	"thin film without coefficient": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "string.south.a.voc_cold": null, "panel.sage-330.technology": "thin_film"}, "about": "string.south.a", "which": "by its coefficients", "verdict": "unproven"},
	"the table is not for thin film": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "panel.sage-330.technology": "thin_film"}, "about": "string.south.a", "which": "by table", "verdict": "does_not_apply"},
	"kind of cell unknown": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "panel.sage-330.technology": null}, "about": "string.south.a", "which": "by table", "verdict": "unproven"},
	"with coefficients the table is not asked": {"design": "meets", "facts": {"panel.sage-330.technology": null}, "about": "string.south.a", "which": "by table", "verdict": "does_not_apply"},
	"by table, coefficients do not count": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false}, "about": "string.south.a", "which": "by its coefficients", "verdict": "does_not_apply"},
	"on a boat by table": {"design": "meets", "facts": {"site.place": "boat", "string.south.a.temp_voc_given": false}, "about": "string.south.a", "which": "by table", "verdict": "does_not_apply"},
	"unknown site.coldest": {"design": "meets", "facts": {"site.coldest": null}, "about": "string.south.a", "which": "by its coefficients", "verdict": "unproven"},
	"unknown panel.sage-330.voc": {"design": "meets", "facts": {"panel.sage-330.voc": null}, "about": "string.south.a", "which": "by its coefficients", "verdict": "unproven"},
	"unknown controller.butte-60.pv_voltage_max": {"design": "meets", "facts": {"controller.butte-60.pv_voltage_max": null}, "about": "string.south.a", "which": "by its coefficients", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "string.south.a", "which": "by its coefficients", "verdict": "does_not_apply"},
	"on a boat, by table": {"design": "meets", "facts": {"site.place": "boat"}, "about": "string.south.a", "which": "by table", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, pv_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
