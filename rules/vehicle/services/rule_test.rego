package codebooks.vehicle.services_test

import data.codebooks.vehicle.services

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"clear": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"not clear": {"design": "meets", "facts": {"bank.house.declared.vehicle.clear_of_services": false}, "about": "bank.house", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"bank.house.declared.vehicle.clear_of_services": null}, "about": "bank.house", "verdict": "unproven"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "verdict": "unproven"},
	"another standard": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "bank.house", "verdict": "does_not_apply"},
	"standard silent": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, services.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
