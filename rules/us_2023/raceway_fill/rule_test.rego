package codebooks.us_2023.raceway_fill_test

import data.codebooks.us_2023.raceway_fill

# Chapter 9, Table 5 from memory: THWN-2 6 AWG 0.0507, 10 AWG 0.0211, 4 AWG 0.0824 square inches.
# rules/us_2023_tables_test.go holds the table to the thicknesses of insulation.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"six of 6 AWG and 10 AWG: 6 x 32.71 + 13.61 mm2 in 524.675 mm2, exactly": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "524.675 mm2"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step less": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "524.6 mm2"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"four, exactly": {"design": "meets", "facts": {"cable_run.array.south.grouped": 4, "cable_run.array.south.declared.us_2023.raceway_area": "361.125 mm2"}, "about": "cable_run.array.south", "verdict": "meets"},
	"four, a step less": {"design": "meets", "facts": {"cable_run.array.south.grouped": 4, "cable_run.array.south.declared.us_2023.raceway_area": "361 mm2"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"three": {"design": "meets", "facts": {"cable_run.array.south.grouped": 3, "cable_run.array.south.declared.us_2023.raceway_area": "10 mm2"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"PV wire is thicker": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "524.675 mm2", "cable_run.array.south.declared.us_2023.cable_type": "pv_wire"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"in free air": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "10 mm2", "cable_run.array.south.method": "free_air"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"below ground": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "10 mm2", "cable_run.array.south.method": "buried"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"inside unknown": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"type unknown": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "900 mm2", "cable_run.array.south.declared.us_2023.cable_type": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"grounding conductor unknown": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "900 mm2", "cable_run.array.south.grounding_size": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"as large as the table, 300 kcmil": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "50 cm2", "cable_run.array.south.size": "300 kcmil"}, "about": "cable_run.array.south", "verdict": "meets"},
	"larger than the table": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "50 cm2", "cable_run.array.south.size": "350 kcmil"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"302 kcmil": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "50 cm2", "cable_run.array.south.area": "302 kcmil"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"the area counts, not what size stands beside it": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "524.675 mm2", "cable_run.array.south.size": "4 AWG", "cable_run.array.south.area": "6 AWG"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a printed size a little above 6 AWG": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "524.675 mm2", "cable_run.array.south.area": "13.33 mm2"}, "about": "cable_run.array.south", "verdict": "meets"},
	"more than printing explains": {"design": "meets", "facts": {"cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "524.675 mm2", "cable_run.array.south.area": "13.45 mm2"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"at the bank the area counts": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 6, "cable_run.charger.main.declared.us_2023.raceway_area": "930.3 mm2", "cable_run.charger.main.declared.us_2023.cable_type": "thwn2", "cable_run.charger.main.size": "2 AWG", "cable_run.charger.main.area": "4 AWG"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"how many unknown": {"design": "meets", "facts": {"cable_run.array.south.grouped": null, "cable_run.array.south.declared.us_2023.raceway_area": "900 mm2"}, "about": "cable_run.array.south", "verdict": "unproven"},
	"six of 4 AWG at the bank: 7 x 53.16 mm2 in 930.3 mm2, exactly": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 6, "cable_run.charger.main.declared.us_2023.raceway_area": "930.3 mm2", "cable_run.charger.main.declared.us_2023.cable_type": "thwn2"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"at the bank, a step less": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 6, "cable_run.charger.main.declared.us_2023.raceway_area": "930.2 mm2", "cable_run.charger.main.declared.us_2023.cable_type": "thwn2"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"one circuit at the bank": {"design": "meets", "facts": {}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat", "cable_run.array.south.grouped": 6, "cable_run.array.south.declared.us_2023.raceway_area": "10 mm2"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, raceway_fill.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
