package codebooks.vehicle.chassis_bond_test

import data.codebooks.vehicle.chassis_bond

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"lead of 70 mm2: exactly at the limit": {"design": "meets", "facts": {"grounding.declared.vehicle.chassis_bond_size": "70 mm2"}, "about": "bank.house", "verdict": "meets"},
	"lead of 70 mm2: a step inside": {"design": "meets", "facts": {"grounding.declared.vehicle.chassis_bond_size": "70.07 mm2"}, "about": "bank.house", "verdict": "meets"},
	"lead of 70 mm2: a step beyond": {"design": "meets", "facts": {"grounding.declared.vehicle.chassis_bond_size": "69.93 mm2"}, "about": "bank.house", "verdict": "breaks"},
	"lead of 70 mm2: unknown": {"design": "meets", "facts": {"grounding.declared.vehicle.chassis_bond_size": null}, "about": "bank.house", "verdict": "unproven"},
	"lead of 4 mm2: 8 AWG": {"design": "meets", "facts": {"cable_run.bank.house.size": "4 mm2", "grounding.declared.vehicle.chassis_bond_size": "8.3656 mm2"}, "about": "bank.house", "verdict": "meets"},
	"lead of 4 mm2: 8.3 mm2": {"design": "meets", "facts": {"cable_run.bank.house.size": "4 mm2", "grounding.declared.vehicle.chassis_bond_size": "8.3 mm2"}, "about": "bank.house", "verdict": "breaks"},
	"lead of 4 mm2: 6 mm2": {"design": "meets", "facts": {"cable_run.bank.house.size": "4 mm2", "grounding.declared.vehicle.chassis_bond_size": "6 mm2"}, "about": "bank.house", "verdict": "breaks"},
	"unknown cable_run.bank.house.size": {"design": "meets", "facts": {"cable_run.bank.house.size": null}, "about": "bank.house", "verdict": "unproven"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "verdict": "unproven"},
	"another standard": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "bank.house", "verdict": "does_not_apply"},
	"standard silent": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "bank.house", "verdict": "unproven"},
	"area of 50 mm2: exactly at the limit": {"design": "meets", "facts": {"cable_run.bank.house.area": "50 mm2", "grounding.declared.vehicle.chassis_bond_size": "50 mm2"}, "about": "bank.house", "verdict": "meets"},
	"two for each pole: 2 x 70 mm2": {"design": "meets", "facts": {"cable_run.bank.house.per_pole": 2, "grounding.declared.vehicle.chassis_bond_size": "140 mm2"}, "about": "bank.house", "verdict": "meets"},
	"two for each pole: a step beyond": {"design": "meets", "facts": {"cable_run.bank.house.per_pole": 2, "grounding.declared.vehicle.chassis_bond_size": "139 mm2"}, "about": "bank.house", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, chassis_bond.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
