package codebooks.us_2023.device_protects_conductor_test

import data.codebooks.us_2023.device_protects_conductor

# 240.4(B) as transcribed in part: 87 A may have 90 A; 90 A has 90 A and not 100 A. Check value B7
# (public transcription).

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"65.25 A: next standard size 70 A: exactly at the limit": {"design": "meets", "facts": {"protection.array.south.rating": "70 A"}, "about": "protection.array.south", "verdict": "meets"},
	"65.25 A: next standard size 70 A: a step below": {"design": "meets", "facts": {"protection.array.south.rating": "69.993 A"}, "about": "protection.array.south", "verdict": "meets"},
	"65.25 A: next standard size 70 A: a step above": {"design": "meets", "facts": {"protection.array.south.rating": "70.007 A"}, "about": "protection.array.south", "verdict": "breaks"},
	"86.45 A: 90 A allowed": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "40 degC", "protection.charger.main.rating": "90 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"86.45 A: 100 A not": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "40 degC", "protection.charger.main.rating": "100 A"}, "about": "protection.charger.main", "verdict": "breaks"},
	"100 A is itself a standard size: 100 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.size": "3 AWG", "cable_run.charger.main.insulation": "75 degC", "protection.charger.main.rating": "100 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"100 A is itself a standard size: not 110 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.size": "3 AWG", "cable_run.charger.main.insulation": "75 degC", "protection.charger.main.rating": "110 A"}, "about": "protection.charger.main", "verdict": "breaks"},
	"a load's circuit does not get the next size: 28.8 A": {"design": "meets", "facts": {"cable_run.load.lights.terminal_temperature": "90 degC", "protection.load.lights.rating": "28.8 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"a load's circuit does not get the next size: 30 A": {"design": "meets", "facts": {"cable_run.load.lights.terminal_temperature": "90 degC", "protection.load.lights.rating": "30 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"a fuse may be of 1 A where a breaker is of 15 A": {"design": "meets", "facts": {"protection.string.south.a.rating": "15 A", "cable_run.string.south.a.ambient": "85 degC", "cable_run.string.south.a.grouped": 30}, "about": "protection.string.south.a", "verdict": "breaks"},
	"a conductor that carries nothing allows no device": {"design": "meets", "facts": {"protection.charger.main.rating": "1 A", "cable_run.charger.main.ambient": "86 degC"}, "about": "protection.charger.main", "verdict": "breaks"},
	"seven of 3 AWG: 805 A, not rounded up": {"design": "meets", "facts": {"cable_run.charger.main.terminal_temperature": "90 degC", "protection.charger.main.rating": "805 A", "cable_run.charger.main.size": "3 AWG", "cable_run.charger.main.per_pole": 7, "cable_run.charger.main.ambient": "30 degC"}, "about": "protection.charger.main", "verdict": "meets"},
	"seven of 3 AWG: a step above": {"design": "meets", "facts": {"cable_run.charger.main.terminal_temperature": "90 degC", "protection.charger.main.rating": "805.1 A", "cable_run.charger.main.size": "3 AWG", "cable_run.charger.main.per_pole": 7, "cable_run.charger.main.ambient": "30 degC"}, "about": "protection.charger.main", "verdict": "breaks"},
	"five of 2/0 AWG at 50 degC: 799.5 A, next standard size 800 A": {"design": "meets", "facts": {"cable_run.charger.main.terminal_temperature": "90 degC", "protection.charger.main.rating": "800 A", "cable_run.charger.main.size": "2/0 AWG", "cable_run.charger.main.per_pole": 5, "cable_run.charger.main.ambient": "50 degC"}, "about": "protection.charger.main", "verdict": "meets"},
	"six of 300 kcmil: 1843 A, not rounded up": {"design": "meets", "facts": {"cable_run.charger.main.terminal_temperature": "90 degC", "protection.charger.main.rating": "1843.2 A", "cable_run.charger.main.size": "300 kcmil", "cable_run.charger.main.per_pole": 6}, "about": "protection.charger.main", "verdict": "meets"},
	"six of 300 kcmil: a step above": {"design": "meets", "facts": {"cable_run.charger.main.terminal_temperature": "90 degC", "protection.charger.main.rating": "1844 A", "cable_run.charger.main.size": "300 kcmil", "cable_run.charger.main.per_pole": 6}, "about": "protection.charger.main", "verdict": "breaks"},
	"terminals cap what is protected: 6 AWG at 60 degC terminals, 55 A: 60 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.insulation": "90 degC", "cable_run.charger.main.size": "6 AWG", "cable_run.charger.main.terminal_temperature": "60 degC", "cable_run.charger.main.per_pole": 1, "protection.charger.main.rating": "60 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"terminals cap what is protected: 6 AWG at 60 degC terminals, 55 A: 60.01 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.insulation": "90 degC", "cable_run.charger.main.size": "6 AWG", "cable_run.charger.main.terminal_temperature": "60 degC", "cable_run.charger.main.per_pole": 1, "protection.charger.main.rating": "60.01 A"}, "about": "protection.charger.main", "verdict": "breaks"},
	"terminals cap what is protected: 4 AWG at 75 degC terminals, 85 A: 90 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.insulation": "90 degC", "cable_run.charger.main.size": "4 AWG", "cable_run.charger.main.terminal_temperature": "75 degC", "cable_run.charger.main.per_pole": 1, "protection.charger.main.rating": "90 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"terminals cap what is protected: 4 AWG at 75 degC terminals, 85 A: 90.01 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.insulation": "90 degC", "cable_run.charger.main.size": "4 AWG", "cable_run.charger.main.terminal_temperature": "75 degC", "cable_run.charger.main.per_pole": 1, "protection.charger.main.rating": "90.01 A"}, "about": "protection.charger.main", "verdict": "breaks"},
	"terminals cap what is protected: two of 6 AWG at 60 degC terminals, 110 A: 110 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.insulation": "90 degC", "cable_run.charger.main.size": "6 AWG", "cable_run.charger.main.terminal_temperature": "60 degC", "cable_run.charger.main.per_pole": 2, "protection.charger.main.rating": "110 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"terminals cap what is protected: two of 6 AWG at 60 degC terminals, 110 A: 110.02 A": {"design": "meets", "facts": {"cable_run.charger.main.ambient": "30 degC", "cable_run.charger.main.insulation": "90 degC", "cable_run.charger.main.size": "6 AWG", "cable_run.charger.main.terminal_temperature": "60 degC", "cable_run.charger.main.per_pole": 2, "protection.charger.main.rating": "110.02 A"}, "about": "protection.charger.main", "verdict": "breaks"},
	"unknown terminals": {"design": "meets", "facts": {"cable_run.charger.main.terminal_temperature": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"each battery's": {"design": "meets", "facts": {}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
	"no conductor beside it": {"design": "breaks", "facts": {}, "about": "protection.supply.twelve", "verdict": "breaks"},
	"unknown protection.array.south.rating": {"design": "meets", "facts": {"protection.array.south.rating": null}, "about": "protection.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.ambient": {"design": "meets", "facts": {"cable_run.array.south.ambient": null}, "about": "protection.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.size": {"design": "meets", "facts": {"cable_run.array.south.size": null}, "about": "protection.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.array.south", "verdict": "does_not_apply"},
	"on a boat, protection.charger.main": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, device_protects_conductor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
