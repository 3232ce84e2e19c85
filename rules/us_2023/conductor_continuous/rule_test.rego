package codebooks.us_2023.conductor_continuous_test

import data.codebooks.us_2023.conductor_continuous

# Check values B1, B3 and B4 (public transcriptions): 11.2 A give 14.0 A and 17.5 A; Table 310.16 has
# 40 A for 10 AWG at 90 degC, Table 310.17 55 A.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"array, 6 AWG at 90 degC: 1.5625 x 48 A = 75 A: exactly at the limit": {"design": "meets", "facts": {"protection.array.south.continuous_rated": false, "cable_run.array.south.current": "48 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"array, 6 AWG at 90 degC: 1.5625 x 48 A = 75 A: a step below": {"design": "meets", "facts": {"protection.array.south.continuous_rated": false, "cable_run.array.south.current": "47.9952 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"array, 6 AWG at 90 degC: 1.5625 x 48 A = 75 A: a step above": {"design": "meets", "facts": {"protection.array.south.continuous_rated": false, "cable_run.array.south.current": "48.0048 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"string, 10 AWG in free air: 1.5625 x 35.2 A = 55 A: exactly at the limit": {"design": "meets", "facts": {"protection.string.south.a.continuous_rated": false, "cable_run.string.south.a.current": "35.2 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"string, 10 AWG in free air: 1.5625 x 35.2 A = 55 A: a step below": {"design": "meets", "facts": {"protection.string.south.a.continuous_rated": false, "cable_run.string.south.a.current": "35.19648 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"string, 10 AWG in free air: 1.5625 x 35.2 A = 55 A: a step above": {"design": "meets", "facts": {"protection.string.south.a.continuous_rated": false, "cable_run.string.south.a.current": "35.20352 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"charger, 4 AWG: 1.25 x 76 A = 95 A: exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "cable_run.charger.main.current": "76 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"charger, 4 AWG: 1.25 x 76 A = 95 A: a step below": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "cable_run.charger.main.current": "75.9924 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"charger, 4 AWG: 1.25 x 76 A = 95 A: a step above": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "cable_run.charger.main.current": "76.0076 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"string, 10 AWG in conduit: 1.5625 x 25.6 A = 40 A: exactly at the limit": {"design": "meets", "facts": {"protection.string.south.a.continuous_rated": false, "cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.current": "25.6 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"string, 10 AWG in conduit: 1.5625 x 25.6 A = 40 A: a step below": {"design": "meets", "facts": {"protection.string.south.a.continuous_rated": false, "cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.current": "25.59744 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"string, 10 AWG in conduit: 1.5625 x 25.6 A = 40 A: a step above": {"design": "meets", "facts": {"protection.string.south.a.continuous_rated": false, "cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.current": "25.60256 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"60 degC insulation, 4 AWG: 1.25 x 56 A = 70 A": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "60 degC", "cable_run.charger.main.current": "56 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"75 degC insulation, 4 AWG: 1.25 x 68 A = 85 A": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "75 degC", "cable_run.charger.main.current": "68 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"70 degC insulation reads the 60 degC column": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "70 degC", "cable_run.charger.main.current": "57 A", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"120 degC insulation reads the 90 degC column": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "120 degC", "cable_run.charger.main.current": "76 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"59.5 degC insulation has no column": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "59.5 degC", "cable_run.charger.main.current": "10 A", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"5.2 mm2 reads 12 AWG": {"design": "meets", "facts": {"cable_run.charger.main.size": "5.2 mm2", "cable_run.charger.main.current": "24.01 A", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"50 degC insulation has no column": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "50 degC", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"aluminum 4 AWG: 75 A": {"design": "meets", "facts": {"cable_run.charger.main.material": "Al", "cable_run.charger.main.current": "60 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"aluminum 4 AWG, a step above": {"design": "meets", "facts": {"cable_run.charger.main.material": "Al", "cable_run.charger.main.current": "60.01 A", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"4 mm2 reads 12 AWG: 1.25 x 24 A = 30 A": {"design": "meets", "facts": {"cable_run.charger.main.size": "4 mm2", "cable_run.charger.main.current": "24 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"4 mm2, a step above": {"design": "meets", "facts": {"cable_run.charger.main.size": "4 mm2", "cable_run.charger.main.current": "24.01 A", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"5.26 mm2, as printed, is 10 AWG": {"design": "meets", "facts": {"cable_run.charger.main.size": "5.26 mm2", "cable_run.charger.main.current": "32 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"two conductors a pole carry twice": {"design": "meets", "facts": {"cable_run.charger.main.per_pole": 2, "cable_run.charger.main.current": "152 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"16 AWG stands in no table": {"design": "meets", "facts": {"cable_run.charger.main.size": "16 AWG", "cable_run.charger.main.current": "1 A", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"the device listed for 100 %: exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": true, "cable_run.charger.main.current": "95 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"the device listed for 100 %: a step above": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": true, "cable_run.charger.main.current": "95.01 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"too little for hours, and whether the device is so listed unknown": {"design": "meets", "facts": {"cable_run.charger.main.current": "77 A"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"a single conductor or not does not matter in conduit": {"design": "meets", "facts": {"cable_run.array.south.cores": null}, "about": "cable_run.array.south", "verdict": "meets"},
	"in free air it does": {"design": "meets", "facts": {"cable_run.string.south.a.cores": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"a load's run": {"design": "meets", "facts": {}, "about": "cable_run.load.lights", "verdict": "meets"},
	"unknown cable_run.array.south.insulation": {"design": "meets", "facts": {"cable_run.array.south.insulation": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.method": {"design": "meets", "facts": {"cable_run.array.south.method": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.size": {"design": "meets", "facts": {"cable_run.array.south.size": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown panel.sage-330.isc": {"design": "meets", "facts": {"panel.sage-330.isc": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"on a boat, cable_run.charger.main": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_continuous.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Without a device none is listed for 100 %: the quarter for continuous duty stays.
# 4 AWG at 90 degC: 1.25 x 76 A = 95 A.
without_device[name] := verdicts if {
	some name, current in {"at the limit": "76 A", "a step above": "76.0076 A"}
	system := test.facts("meets")
	bare := object.union(system, {"cable_runs": [object.union(r, {"protections": []}) | some r in system.cable_runs]})
	all := test.verdicts(bare, conductor_continuous.check, {"cable_run.charger.main.current": current}) with input as bare
	verdicts := [v.verdict | some v in all; v.about == "cable_run.charger.main"]
}

test_without_device if without_device == {"at the limit": ["meets"], "a step above": ["breaks"]}
