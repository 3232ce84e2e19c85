package codebooks.vehicle.lithium_place_test

import data.codebooks.vehicle.lithium_place

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"tight and vented": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"not vented": {"design": "meets", "facts": {"bank.house.declared.vehicle.vented_outside": false}, "about": "bank.house", "verdict": "breaks"},
	"not tight": {"design": "meets", "facts": {"bank.house.declared.vehicle.sealed_from_cabin": false}, "about": "bank.house", "verdict": "breaks"},
	"not tight, vent silent": {"design": "meets", "facts": {"bank.house.declared.vehicle.sealed_from_cabin": false, "bank.house.declared.vehicle.vented_outside": null}, "about": "bank.house", "verdict": "breaks"},
	"vent silent": {"design": "meets", "facts": {"bank.house.declared.vehicle.vented_outside": null}, "about": "bank.house", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "bank.house", "verdict": "does_not_apply"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "verdict": "unproven"},
	"another standard": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "bank.house", "verdict": "does_not_apply"},
	"standard silent": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, lithium_place.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
