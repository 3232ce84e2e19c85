package codebooks.vehicle.fastened_test

import data.codebooks.vehicle.fastened

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"fast": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"loose": {"design": "meets", "facts": {"bank.house.declared.vehicle.restrained": false}, "about": "bank.house", "verdict": "breaks"},
	"loose by another standard": {"design": "meets", "facts": {"bank.house.declared.vehicle.restrained": false, "site.declared.vehicle.standard": "nec_552"}, "about": "bank.house", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"bank.house.declared.vehicle.restrained": null}, "about": "bank.house", "verdict": "unproven"},
	"standard silent": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "bank.house", "verdict": "meets"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, fastened.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
