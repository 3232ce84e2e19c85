package codebooks.vehicle.device_by_size_test

import data.codebooks.vehicle.device_by_size

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"2.5 mm2 takes the row of 14 AWG: exactly at the limit": {"design": "meets", "facts": {"protection.load.lights.rating": "15 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"2.5 mm2 takes the row of 14 AWG: a step inside": {"design": "meets", "facts": {"protection.load.lights.rating": "14.985 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"2.5 mm2 takes the row of 14 AWG: a step beyond": {"design": "meets", "facts": {"protection.load.lights.rating": "15.015 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"2.5 mm2 takes the row of 14 AWG: unknown": {"design": "meets", "facts": {"protection.load.lights.rating": null}, "about": "protection.load.lights", "verdict": "unproven"},
	"12 AWG: 20 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "3.3088 mm2", "protection.load.lights.rating": "20 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"12 AWG: 20.1 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "3.3088 mm2", "protection.load.lights.rating": "20.1 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"10 AWG: 30 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "5.2613 mm2", "protection.load.lights.rating": "30 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"10 AWG: 30.1 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "5.2613 mm2", "protection.load.lights.rating": "30.1 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"18 AWG: 6 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.8231 mm2", "protection.load.lights.rating": "6 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"18 AWG: 8 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.8231 mm2", "protection.load.lights.rating": "8 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"thinner than 18 AWG: none": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.75 mm2", "protection.load.lights.rating": "1 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"8.3 mm2 takes the row of 10 AWG": {"design": "meets", "facts": {"cable_run.load.lights.size": "8.3 mm2", "protection.load.lights.rating": "31 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"0.82 mm2 is thinner than 18 AWG": {"design": "meets", "facts": {"cable_run.load.lights.size": "0.82 mm2", "protection.load.lights.rating": "1 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"8 AWG": {"design": "meets", "facts": {"cable_run.load.lights.size": "8.3656 mm2"}, "about": "protection.load.lights", "verdict": "does_not_apply"},
	"unknown cable_run.load.lights.size": {"design": "meets", "facts": {"cable_run.load.lights.size": null}, "about": "protection.load.lights", "verdict": "unproven"},
	"between batteries": {"design": "meets", "facts": {}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
	"on the AC side, 16 A on 2.5 mm2": {"design": "meets", "facts": {}, "about": "protection.load.socket", "verdict": "does_not_apply"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "protection.load.lights", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "protection.load.lights", "verdict": "unproven"},
	"another standard": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "protection.load.lights", "verdict": "does_not_apply"},
	"standard silent": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "protection.load.lights", "verdict": "unproven"},
	"a load named each": {"design": "meets", "facts": {}, "about": "protection.load.each", "verdict": "meets"},
	"a load named each, 15.1 A on 2.5 mm2": {"design": "meets", "facts": {"protection.load.each.rating": "15.1 A"}, "about": "protection.load.each", "verdict": "breaks"},
	"no conductor": {"design": "meets", "facts": {}, "about": "protection.load.spare", "verdict": "does_not_apply"},
	"area of 10 mm2": {"design": "meets", "facts": {"cable_run.load.lights.area": "10 mm2"}, "about": "protection.load.lights", "verdict": "does_not_apply"},
	"area of 0.75 mm2: none": {"design": "meets", "facts": {"cable_run.load.lights.area": "0.75 mm2", "protection.load.lights.rating": "1 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"area of 12 AWG: 20 A": {"design": "meets", "facts": {"cable_run.load.lights.area": "3.3088 mm2", "protection.load.lights.rating": "20 A"}, "about": "protection.load.lights", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, device_by_size.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
