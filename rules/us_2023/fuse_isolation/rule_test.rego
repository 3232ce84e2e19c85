package codebooks.us_2023.fuse_isolation_test

import data.codebooks.us_2023.fuse_isolation

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"with the bank's switch": {"design": "meets", "facts": {}, "about": "protection.bank.house", "verdict": "meets"},
	"without": {"design": "breaks", "facts": {}, "about": "protection.bank.house", "verdict": "breaks"},
	"an engine's, with a breaker in the bank's main": {"design": "breaks", "facts": {"protection.bank.house.kind": "breaker"}, "about": "protection.charge_source.engine", "verdict": "meets"},
	"an engine's, without": {"design": "breaks", "facts": {}, "about": "protection.charge_source.engine", "verdict": "breaks"},
	"an engine's, with a breaker for each battery": {"design": "breaks", "facts": {"protection.bank.house.each.kind": "breaker"}, "about": "protection.charge_source.engine", "verdict": "breaks"},
	"a breaker": {"design": "breaks", "facts": {}, "about": "protection.charger.main", "verdict": "does_not_apply"},
	"one side alone": {"design": "breaks", "facts": {}, "about": "protection.load.lights", "verdict": "does_not_apply"},
	"where it stands unknown": {"design": "breaks", "facts": {"site.place": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"an inverter that may charge, unknown": {"design": "breaks", "facts": {"protection.ac_output.shop.two_way": null}, "about": "protection.ac_output.shop", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, fuse_isolation.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
