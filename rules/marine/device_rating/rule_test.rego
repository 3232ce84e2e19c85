package codebooks.marine.device_rating_test

import data.codebooks.marine.device_rating

# Worked: 10 AWG 105 degC bears 60 A, so 60 A by ABYC and 90 A by 33 CFR. 2/0 in an engine space 330 x 0.85 =
# 280.5 A: 300 A as the next usual size; three together x 0.70 = 196.4 A: 200 A, not 225 A.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"ISO, 25 mm2 105 degC at 35 degC: 170 x 0.86: exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.rating": "146.2 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"ISO, 25 mm2 105 degC at 35 degC: 170 x 0.86: a step inside": {"design": "meets", "facts": {"protection.charger.main.rating": "146.0538 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"ISO, 25 mm2 105 degC at 35 degC: 170 x 0.86: a step beyond": {"design": "meets", "facts": {"protection.charger.main.rating": "146.3462 A"}, "about": "protection.charger.main", "verdict": "breaks"},
	"ISO, 25 mm2 105 degC at 35 degC: 170 x 0.86: unknown": {"design": "meets", "facts": {"protection.charger.main.rating": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"10 AWG 105 degC, ABYC: 60 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "5.2612 mm2", "cable_run.load.lights.ambient": "30 degC", "protection.load.lights.rating": "60 A", "param.marine.standard": "abyc"}, "about": "protection.load.lights", "verdict": "meets"},
	"10 AWG 105 degC, ABYC: 61 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "5.2612 mm2", "cable_run.load.lights.ambient": "30 degC", "protection.load.lights.rating": "61 A", "param.marine.standard": "abyc"}, "about": "protection.load.lights", "verdict": "breaks"},
	"10 AWG 105 degC, 33 CFR: 90 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "5.2612 mm2", "cable_run.load.lights.ambient": "30 degC", "protection.load.lights.rating": "90 A", "param.marine.standard": "cfr"}, "about": "protection.load.lights", "verdict": "meets"},
	"10 AWG 105 degC, 33 CFR: 90.1 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "5.2612 mm2", "cable_run.load.lights.ambient": "30 degC", "protection.load.lights.rating": "90.1 A", "param.marine.standard": "cfr"}, "about": "protection.load.lights", "verdict": "breaks"},
	"10 AWG, 33 CFR, 50 V: 60 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "5.2612 mm2", "cable_run.load.lights.ambient": "30 degC", "protection.load.lights.rating": "90 A", "protection.load.lights.bus_voltage": "50 V", "param.marine.standard": "cfr"}, "about": "protection.load.lights", "verdict": "breaks"},
	"2/0 in an engine space 280.5 A: 300 A is the next size": {"design": "meets", "facts": {"cable_run.bank.house.size": "67.431 mm2", "cable_run.bank.house.engine_space": true, "protection.bank.house.rating": "300 A", "param.marine.standard": "abyc"}, "about": "protection.bank.house", "verdict": "meets"},
	"2/0 in an engine space: 301 A": {"design": "meets", "facts": {"cable_run.bank.house.size": "67.431 mm2", "cable_run.bank.house.engine_space": true, "protection.bank.house.rating": "301 A", "param.marine.standard": "abyc"}, "about": "protection.bank.house", "verdict": "breaks"},
	"2/0 in an engine space, three together 196.4 A: 200 A": {"design": "meets", "facts": {"cable_run.bank.house.size": "67.431 mm2", "cable_run.bank.house.engine_space": true, "cable_run.bank.house.grouped": 3, "protection.bank.house.rating": "200 A", "param.marine.standard": "abyc"}, "about": "protection.bank.house", "verdict": "meets"},
	"2/0 in an engine space, three together: 225 A": {"design": "meets", "facts": {"cable_run.bank.house.size": "67.431 mm2", "cable_run.bank.house.engine_space": true, "cable_run.bank.house.grouped": 3, "protection.bank.house.rating": "225 A", "param.marine.standard": "abyc"}, "about": "protection.bank.house", "verdict": "breaks"},
	"between batteries": {"design": "meets", "facts": {}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
	"unknown cable_run.charger.main.insulation": {"design": "meets", "facts": {"cable_run.charger.main.insulation": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.size": {"design": "meets", "facts": {"cable_run.charger.main.size": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "protection.charger.main", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"a load named each": {"design": "meets", "facts": {}, "about": "protection.load.each", "verdict": "meets"},
	"a load named each, 30.2 A on 35 x 0.86": {"design": "meets", "facts": {"protection.load.each.rating": "30.2 A"}, "about": "protection.load.each", "verdict": "breaks"},
	"no conductor": {"design": "meets", "facts": {}, "about": "protection.load.spare", "verdict": "does_not_apply"},
	"10 AWG, 33 CFR, 49.6 V: 90 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "5.2612 mm2", "cable_run.load.lights.ambient": "30 degC", "protection.load.lights.rating": "90 A", "protection.load.lights.bus_voltage": "49.6 V", "param.marine.standard": "cfr"}, "about": "protection.load.lights", "verdict": "meets"},
	"the maker's 1.25 A, ABYC: 150 %, not the next size of 2 A": {"design": "meets", "facts": {"cable_run.load.lights.area": "0.5 mm2", "cable_run.load.lights.ampacity": "1.25 A", "protection.load.lights.rating": "1.875 A", "param.marine.standard": "abyc"}, "about": "protection.load.lights", "verdict": "meets"},
	"the maker's 1.25 A, ABYC: a step beyond 150 %": {"design": "meets", "facts": {"cable_run.load.lights.area": "0.5 mm2", "cable_run.load.lights.ampacity": "1.25 A", "protection.load.lights.rating": "1.88 A", "param.marine.standard": "abyc"}, "about": "protection.load.lights", "verdict": "breaks"},
	"the maker's 498 A, ABYC: 500 A is the next size": {"design": "meets", "facts": {"cable_run.bank.house.area": "200 mm2", "cable_run.bank.house.ampacity": "498 A", "protection.bank.house.rating": "500 A", "param.marine.standard": "abyc"}, "about": "protection.bank.house", "verdict": "meets"},
	"the maker's 503 A, ABYC: beyond the sizes its own current": {"design": "meets", "facts": {"cable_run.bank.house.area": "200 mm2", "cable_run.bank.house.ampacity": "503 A", "protection.bank.house.rating": "503 A", "param.marine.standard": "abyc"}, "about": "protection.bank.house", "verdict": "meets"},
	"the maker's 503 A, ABYC: a step beyond": {"design": "meets", "facts": {"cable_run.bank.house.area": "200 mm2", "cable_run.bank.house.ampacity": "503 A", "protection.bank.house.rating": "504 A", "param.marine.standard": "abyc"}, "about": "protection.bank.house", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, device_rating.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
