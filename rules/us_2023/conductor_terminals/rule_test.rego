package codebooks.us_2023.conductor_terminals_test

import data.codebooks.us_2023.conductor_terminals

# Check values B3 (133.7 A and 167.1 A, recomputed) and B4; 110.14(C) as transcribed in field notes.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"4 AWG at 75 degC terminals: 1.25 x 68 A = 85 A: exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "cable_run.charger.main.current": "68 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"4 AWG at 75 degC terminals: 1.25 x 68 A = 85 A: a step below": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "cable_run.charger.main.current": "67.9932 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"4 AWG at 75 degC terminals: 1.25 x 68 A = 85 A: a step above": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "cable_run.charger.main.current": "68.0068 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"4 AWG at 60 degC terminals: 70 A: exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "cable_run.charger.main.terminal_temperature": "60 degC", "cable_run.charger.main.current": "56 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"4 AWG at 60 degC terminals: 70 A: a step below": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "cable_run.charger.main.terminal_temperature": "60 degC", "cable_run.charger.main.current": "55.9944 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"4 AWG at 60 degC terminals: 70 A: a step above": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "cable_run.charger.main.terminal_temperature": "60 degC", "cable_run.charger.main.current": "56.0056 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"2/0 AWG at 75 degC terminals: 175 A: exactly at the limit": {"design": "meets", "facts": {"protection.ac_output.shop.continuous_rated": false, "cable_run.ac_output.shop.size": "2/0 AWG", "cable_run.ac_output.shop.current": "140 A"}, "about": "cable_run.ac_output.shop", "verdict": "meets"},
	"2/0 AWG at 75 degC terminals: 175 A: a step below": {"design": "meets", "facts": {"protection.ac_output.shop.continuous_rated": false, "cable_run.ac_output.shop.size": "2/0 AWG", "cable_run.ac_output.shop.current": "139.986 A"}, "about": "cable_run.ac_output.shop", "verdict": "meets"},
	"2/0 AWG at 75 degC terminals: 175 A: a step above": {"design": "meets", "facts": {"protection.ac_output.shop.continuous_rated": false, "cable_run.ac_output.shop.size": "2/0 AWG", "cable_run.ac_output.shop.current": "140.014 A"}, "about": "cable_run.ac_output.shop", "verdict": "breaks"},
	"inverter of 2500 W at 22 V and 85 %: 167.1 A on 2/0 AWG": {"design": "meets", "facts": {"cable_run.ac_output.shop.size": "2/0 AWG", "cable_run.ac_output.shop.current": "133.69 A", "protection.ac_output.shop.continuous_rated": false}, "about": "cable_run.ac_output.shop", "verdict": "meets"},
	"the same on 1/0 AWG, 150 A": {"design": "meets", "facts": {"cable_run.ac_output.shop.size": "1/0 AWG", "cable_run.ac_output.shop.current": "133.69 A", "protection.ac_output.shop.continuous_rated": false}, "about": "cable_run.ac_output.shop", "verdict": "breaks"},
	"60 A controller on 6 AWG at 75 degC: 75 A over 65 A": {"design": "meets", "facts": {"cable_run.charger.main.size": "6 AWG", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"the same in free air": {"design": "meets", "facts": {"cable_run.charger.main.size": "6 AWG", "cable_run.charger.main.method": "free_air", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"the same, unmarked": {"design": "meets", "facts": {"cable_run.charger.main.size": "6 AWG", "cable_run.charger.main.terminal_temperature": "60 degC", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"insulation of 60 degC at 75 degC terminals reads 60 degC: 70 A": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "60 degC", "cable_run.charger.main.current": "57 A", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"two conductors a pole: 170 A": {"design": "meets", "facts": {"cable_run.charger.main.per_pole": 2, "cable_run.charger.main.current": "136 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"terminals of 90 degC at every end": {"design": "meets", "facts": {"cable_run.charger.main.terminal_temperature": "90 degC", "cable_run.charger.main.current": "76 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"terminals of 59.5 degC": {"design": "meets", "facts": {"cable_run.charger.main.terminal_temperature": "59.5 degC", "cable_run.charger.main.current": "10 A", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"terminals of 50 degC": {"design": "meets", "facts": {"cable_run.charger.main.terminal_temperature": "50 degC", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"the device listed for 100 %: 85 A": {"design": "meets", "facts": {"cable_run.charger.main.current": "85 A", "protection.charger.main.continuous_rated": true}, "about": "cable_run.charger.main", "verdict": "meets"},
	"too little for hours, and whether the device is so listed unknown": {"design": "meets", "facts": {"cable_run.charger.main.current": "69 A"}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.size": {"design": "meets", "facts": {"cable_run.charger.main.size": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.insulation": {"design": "meets", "facts": {"cable_run.charger.main.insulation": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"unknown controller.butte-60.charge_current_max": {"design": "meets", "facts": {"controller.butte-60.charge_current_max": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"on a boat, cable_run.array.south": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"16 AWG stands in no table": {"design": "meets", "facts": {"cable_run.charger.main.size": "16 AWG", "cable_run.charger.main.current": "1 A", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"insulation of 50 degC has no column": {"design": "meets", "facts": {"cable_run.charger.main.insulation": "50 degC", "cable_run.charger.main.current": "1 A", "protection.charger.main.continuous_rated": false}, "about": "cable_run.charger.main", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_terminals.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Without a device none is listed for 100 %: the quarter for continuous duty stays.
# 4 AWG at 75 degC terminals: 1.25 x 68 A = 85 A.
without_device[name] := verdicts if {
	some name, current in {"at the limit": "68 A", "a step above": "68.0068 A"}
	system := test.facts("meets")
	bare := object.union(system, {"cable_runs": [object.union(r, {"protections": []}) | some r in system.cable_runs]})
	all := test.verdicts(bare, conductor_terminals.check, {"cable_run.charger.main.current": current}) with input as bare
	verdicts := [v.verdict | some v in all; v.about == "cable_run.charger.main"]
}

test_without_device if without_device == {"at the limit": ["meets"], "a step above": ["breaks"]}
