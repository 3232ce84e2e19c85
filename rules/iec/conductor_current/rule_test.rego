package codebooks.iec.conductor_current_test

import data.codebooks.iec.conductor_current

# Worked from the tables: 16 mm2 XLPE in conduit at 45 degC, one pair: single conductors 100 x 0.87 =
# 87.0 A, multicore 91 x 0.87 = 79.2 A, with two pairs 63.3 A. PVC on a wall at 4 mm2 is 36 A, in free air
# 40 A: several copies shift the columns by one method. Between rows the hotter one counts.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"25 mm2 XLPE on a wall at 35 degC: exactly at the limit": {"design": "meets", "facts": {"cable_run.charger.main.current": "132.48 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"25 mm2 XLPE on a wall at 35 degC: a step inside": {"design": "meets", "facts": {"cable_run.charger.main.current": "132.34752 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"25 mm2 XLPE on a wall at 35 degC: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.current": "132.61248 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"25 mm2 XLPE on a wall at 35 degC: unknown": {"design": "meets", "facts": {"cable_run.charger.main.current": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"16 mm2 XLPE in conduit at 45 degC, 87.0 A / 1.25: exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.current": "69.6 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"16 mm2 XLPE in conduit at 45 degC, 87.0 A / 1.25: a step inside": {"design": "meets", "facts": {"cable_run.array.south.current": "69.5304 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"16 mm2 XLPE in conduit at 45 degC, 87.0 A / 1.25: a step beyond": {"design": "meets", "facts": {"cable_run.array.south.current": "69.6696 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"16 mm2 XLPE in conduit at 45 degC, 87.0 A / 1.25: unknown": {"design": "meets", "facts": {"cable_run.array.south.current": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"multicore in conduit: 79.17 A, at the limit": {"design": "meets", "facts": {"cable_run.array.south.cores": "multi", "cable_run.array.south.current": "63.336 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"multicore in conduit: a step beyond": {"design": "meets", "facts": {"cable_run.array.south.cores": "multi", "cable_run.array.south.current": "63.34 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"multicore, two pairs: 63.336 A, at the limit": {"design": "meets", "facts": {"cable_run.array.south.cores": "multi", "cable_run.array.south.grouped": 4, "cable_run.array.south.current": "50.6688 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"multicore, two pairs: a step beyond": {"design": "meets", "facts": {"cable_run.array.south.cores": "multi", "cable_run.array.south.grouped": 4, "cable_run.array.south.current": "50.67 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"three conductors count as two circuits": {"design": "meets", "facts": {"cable_run.array.south.cores": "multi", "cable_run.array.south.grouped": 3, "cable_run.array.south.current": "50.67 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"cores unknown, enough for either": {"design": "meets", "facts": {"cable_run.array.south.cores": null, "cable_run.array.south.current": "50 A"}, "about": "cable_run.array.south", "verdict": "unproven"},
	"cores unknown, too much for either": {"design": "meets", "facts": {"cable_run.array.south.cores": null, "cable_run.array.south.current": "70 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"method unknown": {"design": "meets", "facts": {"cable_run.array.south.method": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"4 mm2 PVC on a wall: 36 A": {"design": "meets", "facts": {"cable_run.load.lights.method": "surface", "cable_run.load.lights.current": "36 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"4 mm2 PVC on a wall: 36.01 A": {"design": "meets", "facts": {"cable_run.load.lights.method": "surface", "cable_run.load.lights.current": "36.01 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"4 mm2 PVC in free air: 40 A": {"design": "meets", "facts": {"cable_run.load.lights.method": "free_air", "cable_run.load.lights.current": "40 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"4 mm2 PVC in free air: 40.01 A": {"design": "meets", "facts": {"cable_run.load.lights.method": "free_air", "cable_run.load.lights.current": "40.01 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"4 mm2 PVC multicore in conduit: 30 A": {"design": "meets", "facts": {"cable_run.load.lights.current": "30 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"4 mm2 PVC multicore in conduit: 30.01 A": {"design": "meets", "facts": {"cable_run.load.lights.current": "30.01 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"89 degC is not 90: PVC": {"design": "meets", "facts": {"cable_run.load.lights.insulation": "89 degC", "cable_run.load.lights.current": "30.01 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"90 degC: 40 A": {"design": "meets", "facts": {"cable_run.load.lights.insulation": "90 degC", "cable_run.load.lights.current": "40 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"10 AWG takes the row of 4 mm2": {"design": "meets", "facts": {"cable_run.load.lights.size": "5.26 mm2", "cable_run.load.lights.current": "30.01 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"6 mm2 takes its own": {"design": "meets", "facts": {"cable_run.load.lights.size": "6 mm2", "cable_run.load.lights.current": "38 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"PVC at 60 degC: half": {"design": "meets", "facts": {"cable_run.load.lights.ambient": "60 degC", "cable_run.load.lights.current": "15 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"PVC at 60 degC: more than half": {"design": "meets", "facts": {"cable_run.load.lights.ambient": "60 degC", "cable_run.load.lights.current": "15.01 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"PVC between two rows takes the hotter": {"design": "meets", "facts": {"cable_run.load.lights.ambient": "31 degC", "cable_run.load.lights.current": "28.2 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"PVC between two rows: a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.ambient": "31 degC", "cable_run.load.lights.current": "28.21 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"below 10 degC that row counts": {"design": "meets", "facts": {"cable_run.load.lights.ambient": "-5 degC", "cable_run.load.lights.current": "36.6 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"below 10 degC: a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.ambient": "-5 degC", "cable_run.load.lights.current": "36.61 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"PVC above 60 degC: the maker is asked": {"design": "meets", "facts": {"cable_run.load.lights.ambient": "60.1 degC"}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"PVC above 60 degC, the maker's 10 A": {"design": "meets", "facts": {"cable_run.load.lights.ambient": "60.5 degC", "cable_run.load.lights.ampacity": "10 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"XLPE at 80 degC: 56.58 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "80 degC", "cable_run.charger.main.current": "56.58 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"XLPE at 80 degC: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "80 degC", "cable_run.charger.main.current": "56.6 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"XLPE above 80 degC: the maker is asked": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "80.1 degC"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"120 mm2: 382 x 0.96": {"design": "meets", "facts": {"cable_run.charger.main.size": "120 mm2", "cable_run.charger.main.current": "366.72 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"120.5 mm2 is beyond the table": {"design": "meets", "facts": {"cable_run.charger.main.size": "120.5 mm2"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"1.5 mm2 multicore in conduit: 16.5 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2", "cable_run.load.lights.current": "16.5 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"1.49 mm2 is beyond the table": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.49 mm2"}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"69.9 degC is beyond the table": {"design": "meets", "facts": {"cable_run.load.lights.insulation": "69.9 degC"}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"185 mm2 is beyond the table": {"design": "meets", "facts": {"cable_run.charger.main.size": "185 mm2"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"1 mm2 is beyond the table": {"design": "meets", "facts": {"cable_run.load.lights.size": "1 mm2"}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"aluminum is beyond the table": {"design": "meets", "facts": {"cable_run.charger.main.material": "Al"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"aluminum, the maker's ampacity at the limit": {"design": "meets", "facts": {"cable_run.charger.main.material": "Al", "cable_run.charger.main.ampacity": "70 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"aluminum, the maker's ampacity a step short": {"design": "meets", "facts": {"cable_run.charger.main.material": "Al", "cable_run.charger.main.ampacity": "69.9 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"40 conductors: 0.38": {"design": "meets", "facts": {"cable_run.array.south.grouped": 40, "cable_run.array.south.current": "26.448 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"40 conductors: a step beyond": {"design": "meets", "facts": {"cable_run.array.south.grouped": 40, "cable_run.array.south.current": "26.45 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"41 conductors are beyond the table": {"design": "meets", "facts": {"cable_run.array.south.grouped": 41}, "about": "cable_run.array.south", "verdict": "unproven"},
	"two pairs on a wall in one layer: 112.608 A": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 4, "cable_run.charger.main.current": "112.608 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"two pairs on a wall in one layer: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 4, "cable_run.charger.main.current": "112.7 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"two pairs on a wall in a bunch: 105.984 A": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 4, "cable_run.charger.main.declared.iec.single_layer": false, "cable_run.charger.main.current": "105.984 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"two pairs on a wall in a bunch: a step beyond": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 4, "cable_run.charger.main.declared.iec.single_layer": false, "cable_run.charger.main.current": "106 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"two pairs on a wall, one layer or a bunch unknown, enough for either": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 4, "cable_run.charger.main.declared.iec.single_layer": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"two pairs on a wall, too much even for a layer": {"design": "meets", "facts": {"cable_run.charger.main.grouped": 4, "cable_run.charger.main.declared.iec.single_layer": null, "cable_run.charger.main.current": "112.7 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"two conductors a pole share": {"design": "meets", "facts": {"cable_run.array.south.per_pole": 2, "cable_run.array.south.current": "139.2 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"two conductors a pole share: a step beyond": {"design": "meets", "facts": {"cable_run.array.south.per_pole": 2, "cable_run.array.south.current": "139.3 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"photovoltaic cable on a wall": {"design": "meets", "facts": {}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"photovoltaic cable in conduit is as XLPE": {"design": "meets", "facts": {"cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.current": "29.232 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"photovoltaic cable in conduit: a step beyond": {"design": "meets", "facts": {"cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.current": "29.24 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"perforated tray as free air: 40 A": {"design": "meets", "facts": {"cable_run.load.lights.method": "cable_tray", "cable_run.load.lights.current": "40 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"perforated tray, two pairs in one layer: 35.2 A": {"design": "meets", "facts": {"cable_run.load.lights.method": "cable_tray", "cable_run.load.lights.grouped": 4, "cable_run.load.lights.current": "35.2 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"perforated tray, two pairs: a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.method": "cable_tray", "cable_run.load.lights.grouped": 4, "cable_run.load.lights.current": "35.21 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"closed tray as a wall: 36 A": {"design": "meets", "facts": {"cable_run.load.lights.method": "cable_tray", "cable_run.load.lights.declared.iec.perforated": false, "cable_run.load.lights.current": "36 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"closed tray: a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.method": "cable_tray", "cable_run.load.lights.declared.iec.perforated": false, "cable_run.load.lights.current": "36.01 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"tray, perforated or not unknown, enough for either": {"design": "meets", "facts": {"cable_run.load.lights.method": "cable_tray", "cable_run.load.lights.declared.iec.perforated": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"tray, too much for either": {"design": "meets", "facts": {"cable_run.load.lights.method": "cable_tray", "cable_run.load.lights.declared.iec.perforated": null, "cable_run.load.lights.current": "40.01 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"buried": {"design": "meets", "facts": {}, "about": "cable_run.charge_source.engine", "verdict": "does_not_apply"},
	"unknown panel.fen-200.isc": {"design": "meets", "facts": {"panel.fen-200.isc": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown cable_run.charger.main.ambient": {"design": "meets", "facts": {"cable_run.charger.main.ambient": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.insulation": {"design": "meets", "facts": {"cable_run.charger.main.insulation": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.grouped": {"design": "meets", "facts": {"cable_run.charger.main.grouped": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.size": {"design": "meets", "facts": {"cable_run.charger.main.size": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
