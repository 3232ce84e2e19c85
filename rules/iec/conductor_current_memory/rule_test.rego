package codebooks.iec.conductor_current_memory_test

import data.codebooks.iec.conductor_current_memory

# Worked: photovoltaic 4 mm2 pair at 70 degC: 44 x 0.92 = 40.5 A with the conductor at 120 degC; at 90 degC
# 44 x 0.7071 x 0.58 / 0.71 = 25.4 A, where the table for XLPE on a wall gives 45 x 0.58 = 26.1 A.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"16 mm2 XLPE direct in the ground: exactly at the limit": {"design": "meets", "facts": {"cable_run.charge_source.engine.current": "100 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"16 mm2 XLPE direct in the ground: a step inside": {"design": "meets", "facts": {"cable_run.charge_source.engine.current": "99.9 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"16 mm2 XLPE direct in the ground: a step beyond": {"design": "meets", "facts": {"cable_run.charge_source.engine.current": "100.1 A"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"16 mm2 XLPE direct in the ground: unknown": {"design": "meets", "facts": {"cable_run.charge_source.engine.current": null}, "about": "cable_run.charge_source.engine", "verdict": "unproven"},
	"in a duct: 91 A": {"design": "meets", "facts": {"cable_run.charge_source.engine.method": "buried", "cable_run.charge_source.engine.current": "91 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"in a duct: a step beyond": {"design": "meets", "facts": {"cable_run.charge_source.engine.method": "buried", "cable_run.charge_source.engine.current": "91.01 A"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"ground of 25 degC: 96 A": {"design": "meets", "facts": {"cable_run.charge_source.engine.declared.iec.ground_temperature": "25 degC", "cable_run.charge_source.engine.current": "96 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"ground of 25 degC: a step beyond": {"design": "meets", "facts": {"cable_run.charge_source.engine.declared.iec.ground_temperature": "25 degC", "cable_run.charge_source.engine.current": "96.01 A"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"ground of 21 degC takes the row of 25": {"design": "meets", "facts": {"cable_run.charge_source.engine.declared.iec.ground_temperature": "21 degC", "cable_run.charge_source.engine.current": "96.01 A"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"ground of 45 degC: 80 A": {"design": "meets", "facts": {"cable_run.charge_source.engine.declared.iec.ground_temperature": "45 degC", "cable_run.charge_source.engine.current": "80 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"ground above 45 degC: the maker is asked": {"design": "meets", "facts": {"cable_run.charge_source.engine.declared.iec.ground_temperature": "45.1 degC"}, "about": "cable_run.charge_source.engine", "verdict": "unproven"},
	"ground unknown": {"design": "meets", "facts": {"cable_run.charge_source.engine.declared.iec.ground_temperature": null}, "about": "cable_run.charge_source.engine", "verdict": "unproven"},
	"groups in the ground: the maker is asked": {"design": "meets", "facts": {"cable_run.charge_source.engine.grouped": 4}, "about": "cable_run.charge_source.engine", "verdict": "unproven"},
	"in an insulated wall, multicore: 76 A at 30 degC": {"design": "meets", "facts": {"cable_run.charge_source.engine.method": "insulated_wall", "cable_run.charge_source.engine.ambient": "30 degC", "cable_run.charge_source.engine.current": "76 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"in an insulated wall, multicore: a step beyond": {"design": "meets", "facts": {"cable_run.charge_source.engine.method": "insulated_wall", "cable_run.charge_source.engine.ambient": "30 degC", "cable_run.charge_source.engine.current": "76.01 A"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"in an insulated wall, single: 81 A": {"design": "meets", "facts": {"cable_run.charge_source.engine.method": "insulated_wall", "cable_run.charge_source.engine.cores": "single", "cable_run.charge_source.engine.ambient": "30 degC", "cable_run.charge_source.engine.current": "81 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"in an insulated wall, single: a step beyond": {"design": "meets", "facts": {"cable_run.charge_source.engine.method": "insulated_wall", "cable_run.charge_source.engine.cores": "single", "cable_run.charge_source.engine.ambient": "30 degC", "cable_run.charge_source.engine.current": "81.01 A"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"photovoltaic 4 mm2 pair at 60 degC, conductor 90: 31.1 A": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "60 degC", "cable_run.string.south.a.current": "24.88 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"photovoltaic 4 mm2 pair at 60 degC, conductor 90: a step beyond": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "60 degC", "cable_run.string.south.a.current": "24.9 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"photovoltaic 4 mm2 pair at 70 degC, conductor 120: 40.48 A": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "70 degC", "param.iec.pv_conductor_max": "120 degC", "cable_run.string.south.a.current": "32.384 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"photovoltaic 4 mm2 pair at 70 degC, conductor 120: a step beyond": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "70 degC", "param.iec.pv_conductor_max": "120 degC", "cable_run.string.south.a.current": "32.4 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"photovoltaic 4 mm2 pair at 70 degC, conductor 90: 25.4 A": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "70 degC", "cable_run.string.south.a.current": "20.33 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"photovoltaic 4 mm2 pair at 70 degC, conductor 90: a step beyond": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "70 degC", "cable_run.string.south.a.current": "20.34 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"photovoltaic above 80 degC, conductor 90: the maker is asked": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "80.5 degC"}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"photovoltaic at 90 degC, conductor 120: 33 A": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "90 degC", "param.iec.pv_conductor_max": "120 degC", "cable_run.string.south.a.current": "26.4 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"photovoltaic above 90 degC: the maker is asked": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "90.5 degC", "param.iec.pv_conductor_max": "120 degC"}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"insulation of 119 degC is none": {"design": "meets", "facts": {"cable_run.string.south.a.insulation": "119 degC"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"in conduit": {"design": "meets", "facts": {}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"method unknown": {"design": "meets", "facts": {"cable_run.charge_source.engine.method": null}, "about": "cable_run.charge_source.engine", "verdict": "unproven"},
	"metal of 10 mm2 in the ground": {"design": "meets", "facts": {"cable_run.charge_source.engine.area": "10 mm2", "cable_run.charge_source.engine.current": "100 A"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"metal of 10 mm2 in a duct": {"design": "meets", "facts": {"cable_run.charge_source.engine.area": "10 mm2", "cable_run.charge_source.engine.current": "91 A", "cable_run.charge_source.engine.method": "buried"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"photovoltaic, metal of 2.5 mm2": {"design": "meets", "facts": {"cable_run.string.south.a.area": "2.5 mm2", "cable_run.string.south.a.current": "24.88 A", "cable_run.string.south.a.ambient": "60 degC"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"ground of 5 degC takes the row of 10: 107 A": {"design": "meets", "facts": {"cable_run.charge_source.engine.declared.iec.ground_temperature": "5 degC", "cable_run.charge_source.engine.current": "107 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"photovoltaic, two pairs in one layer": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "60 degC", "cable_run.string.south.a.grouped": 4, "cable_run.string.south.a.declared.iec.single_layer": true, "cable_run.string.south.a.current": "24.88 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"photovoltaic, conductor 119.5 is used as 90": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "70 degC", "param.iec.pv_conductor_max": "119.5 degC", "cable_run.string.south.a.current": "20.34 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"photovoltaic above 80 degC, conductor 119.5: the maker's 10 A": {"design": "meets", "facts": {"cable_run.string.south.a.ambient": "85 degC", "param.iec.pv_conductor_max": "119.5 degC", "cable_run.string.south.a.ampacity": "10 A", "cable_run.string.south.a.current": "10.4 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"in the ground, whatever the air above it and its maker say": {"design": "meets", "facts": {"cable_run.charge_source.engine.ambient": "95 degC", "cable_run.charge_source.engine.ampacity": "1 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"in a duct in the ground, whatever the air above it": {"design": "meets", "facts": {"cable_run.charge_source.engine.method": "buried", "cable_run.charge_source.engine.ambient": "95 degC", "cable_run.charge_source.engine.ampacity": "1 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_current_memory.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
