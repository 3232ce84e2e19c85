package codebooks.vehicle.lithium_standard_test

import data.codebooks.vehicle.lithium_standard

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"IEC 62619": {"design": "meets", "facts": {}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"other": {"design": "meets", "facts": {"bank.house.declared.vehicle.cell_standard": "other"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"bank.house.declared.vehicle.cell_standard": null}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"listed": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "bank.house", "which": "RVIA LV", "verdict": "meets"},
	"not listed": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv", "bank.house.declared.vehicle.listed": false}, "about": "bank.house", "which": "RVIA LV", "verdict": "breaks"},
	"listing silent": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv", "bank.house.declared.vehicle.listed": null}, "about": "bank.house", "which": "RVIA LV", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "does_not_apply"},
	"not a vehicle (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "does_not_apply"},
	"place unknown (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"another standard (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "does_not_apply"},
	"standard silent (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"not a vehicle (RVIA LV)": {"design": "meets", "facts": {"site.place": "building", "site.declared.vehicle.standard": "rvia_lv"}, "about": "bank.house", "which": "RVIA LV", "verdict": "does_not_apply"},
	"another standard (RVIA LV)": {"design": "meets", "facts": {}, "about": "bank.house", "which": "RVIA LV", "verdict": "does_not_apply"},
	"standard silent (RVIA LV)": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "bank.house", "which": "RVIA LV", "verdict": "unproven"},
	"lead (RVIA LV)": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv", "battery.peat-100.chemistry": "agm"}, "about": "bank.house", "which": "RVIA LV", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, lithium_standard.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
