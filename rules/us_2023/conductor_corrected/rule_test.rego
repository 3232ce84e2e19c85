package codebooks.us_2023.conductor_corrected_test

import data.codebooks.us_2023.conductor_corrected

# Check values B3, B5, B6 and B9 (public transcriptions): 10 AWG at 45 degC 40 x 0.87 = 34.8 A, four
# conductors x 0.80; 30.5 degC takes the hotter row; 35 + 33 = 68 degC gives 0.58; 90 + 60 degF give
# 0.33 x 50 = 16.5 A.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"6 AWG at 45 degC: 75 A x 0.87 = 65.25 A: exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.current": "52.2 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"6 AWG at 45 degC: 75 A x 0.87 = 65.25 A: a step below": {"design": "meets", "facts": {"cable_run.array.south.current": "52.19478 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"6 AWG at 45 degC: 75 A x 0.87 = 65.25 A: a step above": {"design": "meets", "facts": {"cable_run.array.south.current": "52.20522 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"10 AWG at 45 degC in conduit: 34.8 A: exactly at the limit": {"design": "meets", "facts": {"cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.ambient": "45 degC", "cable_run.string.south.a.current": "27.84 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"10 AWG at 45 degC in conduit: 34.8 A: a step below": {"design": "meets", "facts": {"cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.ambient": "45 degC", "cable_run.string.south.a.current": "27.837216 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"10 AWG at 45 degC in conduit: 34.8 A: a step above": {"design": "meets", "facts": {"cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.ambient": "45 degC", "cable_run.string.south.a.current": "27.842784 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"the same, four conductors: 27.84 A: exactly at the limit": {"design": "meets", "facts": {"cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.ambient": "45 degC", "cable_run.string.south.a.grouped": 4, "cable_run.string.south.a.current": "22.272 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"the same, four conductors: 27.84 A: a step below": {"design": "meets", "facts": {"cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.ambient": "45 degC", "cable_run.string.south.a.grouped": 4, "cable_run.string.south.a.current": "22.2697728 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"the same, four conductors: 27.84 A: a step above": {"design": "meets", "facts": {"cable_run.string.south.a.method": "conduit", "cable_run.string.south.a.ambient": "45 degC", "cable_run.string.south.a.grouped": 4, "cable_run.string.south.a.current": "22.2742272 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"4 AWG at 35 degC: 95 A x 0.96: exactly at the limit": {"design": "meets", "facts": {"cable_run.charger.main.current": "91.2 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"4 AWG at 35 degC: 95 A x 0.96: a step below": {"design": "meets", "facts": {"cable_run.charger.main.current": "91.19088 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"4 AWG at 35 degC: 95 A x 0.96: a step above": {"design": "meets", "facts": {"cable_run.charger.main.current": "91.20912 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"at 30 degC no correction": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.current": "95 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"at 30.5 degC the hotter row: 0.96": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30.5 degC", "cable_run.charger.main.current": "95 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"at 30.5 degC 91.2 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30.5 degC", "cable_run.charger.main.current": "91.2 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"three conductors need no adjustment": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.grouped": 3, "cable_run.charger.main.current": "95 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"four do: 0.80": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.grouped": 4, "cable_run.charger.main.current": "76 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"four, a step above": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.grouped": 4, "cable_run.charger.main.current": "76.01 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"four in a raceway of 600 mm": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.grouped": 4, "cable_run.charger.main.length": "600 mm", "cable_run.charger.main.current": "95 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"four in a raceway of 600 mm, a step above": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.grouped": 4, "cable_run.charger.main.length": "600 mm", "cable_run.charger.main.current": "95.1 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"four in one of 601 mm": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.grouped": 4, "cable_run.charger.main.length": "601 mm", "cable_run.charger.main.current": "95 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"60 degC insulation at 55 degC: 0.41 x 70 A": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "60 degC", "cable_run.charger.main.ambient": "55 degC", "cable_run.charger.main.current": "28.7 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"60 degC insulation at 56 degC carries nothing": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "60 degC", "cable_run.charger.main.ambient": "56 degC", "cable_run.charger.main.current": "1 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"90 degC insulation at 85 degC: 0.29 x 95 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "85 degC", "cable_run.charger.main.current": "27.55 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"90 degC insulation at 85.01 degC carries nothing": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "85.01 degC", "cable_run.charger.main.current": "1 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"37 + 33 = 70 degC over a roof: 0.58 x 75 A": {"design": "meets", "facts": {"cable_run.array.south.ambient": "37 degC", "cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": true, "cable_run.array.south.above_roof": "10 mm", "cable_run.array.south.current": "34.8 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"37.2 + 33 degC takes the next row: 0.50 x 75 A": {"design": "meets", "facts": {"cable_run.array.south.ambient": "37.2 degC", "cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": true, "cable_run.array.south.above_roof": "10 mm", "cable_run.array.south.current": "34.8 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"90 degC insulation at 86 degC carries nothing": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "86 degC", "cable_run.charger.main.current": "1 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"150 degC insulation counts as 90 degC": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "150 degC", "cable_run.charger.main.ambient": "86 degC", "cable_run.charger.main.current": "1 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"75 degC insulation, 8 AWG, 90 degF and 60 degF over a roof: 0.33 x 50 A": {"design": "meets", "facts": {"cable_run.array.south.insulation": "75 degC", "cable_run.array.south.size": "8 AWG", "cable_run.array.south.ambient": "90 degF", "cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": true, "cable_run.array.south.above_roof": "18.9 mm", "cable_run.array.south.current": "13.2 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"the same, a step above 16.5 A": {"design": "meets", "facts": {"cable_run.array.south.insulation": "75 degC", "cable_run.array.south.size": "8 AWG", "cable_run.array.south.ambient": "90 degF", "cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": true, "cable_run.array.south.above_roof": "18.9 mm", "cable_run.array.south.current": "13.21 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"35 + 33 = 68 degC over a roof: 0.58 x 75 A": {"design": "meets", "facts": {"cable_run.array.south.ambient": "35 degC", "cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": true, "cable_run.array.south.above_roof": "18.9 mm", "cable_run.array.south.current": "34.8 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"the same, a step above 43.5 A": {"design": "meets", "facts": {"cable_run.array.south.ambient": "35 degC", "cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": true, "cable_run.array.south.above_roof": "18.9 mm", "cable_run.array.south.current": "34.81 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"19 mm over the roof is high enough": {"design": "meets", "facts": {"cable_run.array.south.ambient": "35 degC", "cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": true, "cable_run.array.south.above_roof": "19 mm", "cable_run.array.south.current": "57.6 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step less is not": {"design": "meets", "facts": {"cable_run.array.south.ambient": "35 degC", "cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": true, "cable_run.array.south.above_roof": "18.99 mm", "cable_run.array.south.current": "57.6 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"XHHW-2 is excepted": {"design": "meets", "facts": {"cable_run.array.south.ambient": "35 degC", "cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": true, "cable_run.array.south.above_roof": "10 mm", "cable_run.array.south.declared.us_2023.cable_type": "xhhw2", "cable_run.array.south.current": "57.6 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"height over a roof unknown": {"design": "meets", "facts": {"cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": true, "cable_run.array.south.above_roof": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"whether it lies on a roof unknown": {"design": "meets", "facts": {"cable_run.array.south.indoors": false, "cable_run.array.south.declared.us_2023.on_roof": null, "cable_run.array.south.above_roof": "10 mm"}, "about": "cable_run.array.south", "verdict": "unproven"},
	"indoors no roof is asked about": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.on_roof": null, "cable_run.array.south.above_roof": null}, "about": "cable_run.array.south", "verdict": "meets"},
	"a bank's run is not asked about a roof": {"design": "meets", "facts": {"cable_run.bank.house.indoors": null}, "about": "cable_run.bank.house", "verdict": "meets"},
	"unknown cable_run.array.south.ambient": {"design": "meets", "facts": {"cable_run.array.south.ambient": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.grouped": {"design": "meets", "facts": {"cable_run.array.south.grouped": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.length": {"design": "meets", "facts": {"cable_run.array.south.length": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.insulation": {"design": "meets", "facts": {"cable_run.array.south.insulation": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.current": {"design": "meets", "facts": {"cable_run.array.south.current": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"on a boat, cable_run.charger.main": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_corrected.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
