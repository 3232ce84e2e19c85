package codebooks.marine.conductor_current_test

import data.codebooks.marine.conductor_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"ISO, 25 mm2 105 degC at 35 degC: 170 x 0.86: exactly at the limit": {"design": "meets", "facts": {"cable_run.charger.main.current": "146.2 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"ISO, 25 mm2 105 degC at 35 degC: 170 x 0.86: a step inside": {"design": "meets", "facts": {"cable_run.charger.main.current": "146.0538 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"ISO, 25 mm2 105 degC at 35 degC: 170 x 0.86: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.current": "146.3462 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"ISO, 25 mm2 105 degC at 35 degC: 170 x 0.86: unknown": {"design": "meets", "facts": {"cable_run.charger.main.current": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"PV side, 16 mm2: 130 x 0.86 / 1.25: exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.current": "89.44 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"PV side, 16 mm2: 130 x 0.86 / 1.25: a step inside": {"design": "meets", "facts": {"cable_run.array.south.current": "89.35056 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"PV side, 16 mm2: 130 x 0.86 / 1.25: a step beyond": {"design": "meets", "facts": {"cable_run.array.south.current": "89.52944 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"PV side, 16 mm2: 130 x 0.86 / 1.25: unknown": {"design": "meets", "facts": {"cable_run.array.south.current": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"at 30 degC: 170 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.current": "170 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"at 30 degC: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.current": "170.1 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"at 30 degC in an engine space: 146.2 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.engine_space": true, "cable_run.charger.main.current": "146.3 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"engine space unknown in hot air does not matter": {"design": "meets", "facts": {"cable_run.charger.main.engine_space": null}, "about": "cable_run.charger.main", "verdict": "meets"},
	"engine space unknown at 30 degC": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.engine_space": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"four in a bundle: 0.7": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 4, "cable_run.charger.main.current": "102.34 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"four in a bundle: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 4, "cable_run.charger.main.current": "102.4 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"four in a bundle do not count below 50 V where the workshop says so": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 4, "cable_run.charger.main.current": "146.2 A", "param.marine.bundle_below_50v": false}, "about": "cable_run.charger.main", "verdict": "meets"},
	"at 50 V they do": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 4, "cable_run.charger.main.current": "146.2 A", "param.marine.bundle_below_50v": false, "cable_run.charger.main.bus_voltage": "50 V"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"33 CFR, 4 AWG 105 degC: 160 x 0.85": {"design": "meets", "facts": {"cable_run.charger.main.current": "136 A", "param.marine.standard": "cfr"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"33 CFR, 4 AWG: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.current": "136.1 A", "param.marine.standard": "cfr"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"25 mm2 takes the row of 4 AWG, 35 mm2 that of 2 AWG": {"design": "meets", "facts": {"cable_run.charger.main.size": "35 mm2", "cable_run.charger.main.current": "178.5 A", "param.marine.standard": "cfr"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"35 mm2: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.size": "35 mm2", "cable_run.charger.main.current": "178.6 A", "param.marine.standard": "cfr"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"60 degC in an engine space, ISO: the maker is asked": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "60 degC"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"60 degC in an engine space, 33 CFR: 105 x 0.58": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "60 degC", "cable_run.charger.main.current": "60.9 A", "param.marine.standard": "cfr"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"60 degC in an engine space, 33 CFR: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "60 degC", "cable_run.charger.main.current": "61 A", "param.marine.standard": "cfr"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"50 degC is within the table": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "50 degC"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"30.1 degC is hot": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30.1 degC", "cable_run.charger.main.current": "146.3 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"above 50 degC the maker is asked": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "50.1 degC"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"above 50 degC, the maker's 100 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "50.5 degC", "cable_run.charger.main.ampacity": "100 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"150 mm2: 475 x 0.86": {"design": "meets", "facts": {"cable_run.charger.main.size": "150 mm2", "cable_run.charger.main.current": "408.5 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"150.5 mm2 is beyond the table of ISO": {"design": "meets", "facts": {"cable_run.charger.main.size": "150.5 mm2"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"120 mm2, 33 CFR: the row of 4/0, 445 x 0.85": {"design": "meets", "facts": {"cable_run.charger.main.size": "120 mm2", "cable_run.charger.main.current": "378.25 A", "param.marine.standard": "cfr"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"120.5 mm2 is beyond the table of 33 CFR": {"design": "meets", "facts": {"cable_run.charger.main.size": "120.5 mm2", "param.marine.standard": "cfr"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"0.75 mm2: 16 x 0.86": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.75 mm2", "cable_run.load.lights.current": "13.76 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"0.74 mm2 is beyond the table of ISO": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.74 mm2"}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"18 AWG, 33 CFR: 20 x 0.85": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.8231 mm2", "cable_run.load.lights.current": "17 A", "param.marine.standard": "cfr"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"0.81 mm2 is beyond the table of 33 CFR": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.81 mm2", "param.marine.standard": "cfr"}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"70 degC in hot air, ISO: 120 x 0.75": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "70 degC", "cable_run.charger.main.current": "90 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"69.9 degC in hot air, ISO: the maker is asked": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "69.9 degC"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"60 degC at 30 degC, ISO: 110 A": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "60 degC", "cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.current": "110 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"59 degC is beyond the table": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "59 degC"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.insulation": {"design": "meets", "facts": {"cable_run.charger.main.insulation": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.ambient": {"design": "meets", "facts": {"cable_run.charger.main.ambient": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.grouped": {"design": "meets", "facts": {"cable_run.charger.main.grouped": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.size": {"design": "meets", "facts": {"cable_run.charger.main.size": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
