package codebooks.us_2023.storage_place_test

import data.codebooks.us_2023.storage_place

# 40 and 80 kWh from memory.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"garage": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "garage", "bank.house.energy": "10 kWh"}, "about": "bank.house", "which": "room", "verdict": "meets"},
	"outdoors": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "outdoors", "bank.house.energy": "10 kWh"}, "about": "bank.house", "which": "room", "verdict": "meets"},
	"a building of its own": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "detached", "bank.house.energy": "10 kWh"}, "about": "bank.house", "which": "room", "verdict": "meets"},
	"a utility space": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "utility", "bank.house.energy": "10 kWh"}, "about": "bank.house", "which": "room", "verdict": "meets"},
	"living room": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "habitable", "bank.house.energy": "2 kWh"}, "about": "bank.house", "which": "room", "verdict": "breaks"},
	"where unknown": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": null}, "about": "bank.house", "which": "room", "verdict": "unproven"},
	"utility, exactly 40 kWh": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "utility", "bank.house.energy": "40 kWh"}, "about": "bank.house", "which": "energy", "verdict": "meets"},
	"utility, 40.1 kWh": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "utility", "bank.house.energy": "40.1 kWh"}, "about": "bank.house", "which": "energy", "verdict": "breaks"},
	"garage, exactly 80 kWh": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "garage", "bank.house.energy": "80 kWh"}, "about": "bank.house", "which": "energy", "verdict": "meets"},
	"garage, 80.1 kWh": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "garage", "bank.house.energy": "80.1 kWh"}, "about": "bank.house", "which": "energy", "verdict": "breaks"},
	"detached, 60 kWh": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "detached", "bank.house.energy": "60 kWh"}, "about": "bank.house", "which": "energy", "verdict": "meets"},
	"outdoors, 60 kWh": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "outdoors", "bank.house.energy": "60 kWh"}, "about": "bank.house", "which": "energy", "verdict": "meets"},
	"energy unknown": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.energy": null}, "about": "bank.house", "which": "energy", "verdict": "unproven"},
	"lead in a living room": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "habitable", "bank.house.energy": "2 kWh", "battery.mesa-100.chemistry": "agm"}, "about": "bank.house", "which": "room", "verdict": "does_not_apply"},
	"no dwelling": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "other", "bank.house.declared.us_2023.room": "habitable", "bank.house.energy": "90 kWh"}, "about": "bank.house", "which": "room", "verdict": "does_not_apply"},
	"no dwelling, energy": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "other", "bank.house.declared.us_2023.room": "habitable", "bank.house.energy": "90 kWh"}, "about": "bank.house", "which": "energy", "verdict": "does_not_apply"},
	"what it is unknown": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": null}, "about": "bank.house", "which": "room", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "one_two_family", "bank.house.declared.us_2023.room": "habitable", "bank.house.energy": "90 kWh", "site.place": "boat"}, "about": "bank.house", "which": "room", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, storage_place.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
