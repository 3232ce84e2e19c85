package codebooks.vehicle.first_device_test

import data.codebooks.vehicle.first_device

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"0.20 m": {"design": "meets", "facts": {}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"0.201 m, bare": {"design": "meets", "facts": {"protection.bank.house.distance": "0.201 m"}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "breaks"},
	"0.999 m enclosed": {"design": "meets", "facts": {"protection.bank.house.distance": "0.999 m", "protection.bank.house.declared.vehicle.enclosed_cable": true}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"1.00 m enclosed: less than 1.0 m is due": {"design": "meets", "facts": {"protection.bank.house.distance": "1 m", "protection.bank.house.declared.vehicle.enclosed_cable": true}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "breaks"},
	"straight outside the enclosure": {"design": "meets", "facts": {"protection.bank.house.distance": "2 m", "protection.bank.house.declared.vehicle.outside_enclosure": true}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"0.5 m, whether enclosed unknown": {"design": "meets", "facts": {"protection.bank.house.distance": "0.5 m", "protection.bank.house.declared.vehicle.enclosed_cable": null}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"0.2 m, all else unknown": {"design": "meets", "facts": {"protection.bank.house.declared.vehicle.enclosed_cable": null, "protection.bank.house.declared.vehicle.outside_enclosure": null}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"distance unknown": {"design": "meets", "facts": {"protection.bank.house.distance": null}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"between batteries": {"design": "meets", "facts": {}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
	"NEC 552: exactly at the limit": {"design": "meets", "facts": {"site.declared.vehicle.standard": "nec_552", "protection.bank.house.distance": "0.4572 m"}, "about": "protection.bank.house", "which": "NEC 552", "verdict": "meets"},
	"NEC 552: a step inside": {"design": "meets", "facts": {"site.declared.vehicle.standard": "nec_552", "protection.bank.house.distance": "0.4567428 m"}, "about": "protection.bank.house", "which": "NEC 552", "verdict": "meets"},
	"NEC 552: a step beyond": {"design": "meets", "facts": {"site.declared.vehicle.standard": "nec_552", "protection.bank.house.distance": "0.4576572 m"}, "about": "protection.bank.house", "which": "NEC 552", "verdict": "breaks"},
	"NEC 552: unknown": {"design": "meets", "facts": {"site.declared.vehicle.standard": "nec_552", "protection.bank.house.distance": null}, "about": "protection.bank.house", "which": "NEC 552", "verdict": "unproven"},
	"not a vehicle (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.place": "building"}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "does_not_apply"},
	"place unknown (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.place": null}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"another standard (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "does_not_apply"},
	"standard silent (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "protection.bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"not a vehicle (NEC 552)": {"design": "meets", "facts": {"site.place": "building", "site.declared.vehicle.standard": "nec_552"}, "about": "protection.bank.house", "which": "NEC 552", "verdict": "does_not_apply"},
	"another standard (NEC 552)": {"design": "meets", "facts": {}, "about": "protection.bank.house", "which": "NEC 552", "verdict": "does_not_apply"},
	"standard silent (NEC 552)": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "protection.bank.house", "which": "NEC 552", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, first_device.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What is said of each device: of a main, a branch, and one between batteries.
test_said[about] if {
	some about, owed in {"protection.bank.house": {"AS/NZS 3001.2", "NEC 552"}, "protection.charger.main": {null}, "protection.bank.house.each": {null}}
	system := test.facts("meets")
	verdicts := test.verdicts(system, first_device.check, {}) with input as system
	owed == {object.get(v, "which", null) | some v in verdicts; v.about == about}
}
