package codebooks.limits.fuse_protects_conductor_test

import data.codebooks.limits.fuse_protects_conductor

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"no conductor described": {"design": "breaks", "facts": {}, "about": "protection.supply.twelve", "verdict": "breaks"},
	"exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.rating": "110 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"protection.charger.main.rating": "109.989 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"protection.charger.main.rating": "110.011 A"}, "about": "protection.charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"protection.charger.main.rating": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"unknown cable_run.charger.main.ampacity": {"design": "meets", "facts": {"cable_run.charger.main.ampacity": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"two conductors a pole share": {"design": "meets", "facts": {"protection.charger.main.rating": "220 A", "cable_run.charger.main.per_pole": 2}, "about": "protection.charger.main", "verdict": "meets"},
	"between batteries": {"design": "meets", "facts": {}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, fuse_protects_conductor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
