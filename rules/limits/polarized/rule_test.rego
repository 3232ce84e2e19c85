package codebooks.limits.polarized_test

import data.codebooks.limits.polarized

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"no": {"design": "meets", "facts": {"protection.charger.main.polarized": false}, "about": "protection.charger.main", "verdict": "meets"},
	"yes": {"design": "meets", "facts": {"protection.charger.main.polarized": true}, "about": "protection.charger.main", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"protection.charger.main.polarized": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"array: no": {"design": "meets", "facts": {"protection.array.south.two_way": true, "protection.array.south.polarized": false}, "about": "protection.array.south", "verdict": "meets"},
	"array: yes": {"design": "meets", "facts": {"protection.array.south.two_way": true, "protection.array.south.polarized": true}, "about": "protection.array.south", "verdict": "breaks"},
	"array: silent": {"design": "meets", "facts": {"protection.array.south.two_way": true, "protection.array.south.polarized": null}, "about": "protection.array.south", "verdict": "unproven"},
	"a fuse": {"design": "meets", "facts": {}, "about": "protection.bank.house", "verdict": "does_not_apply"},
	"a load's": {"design": "meets", "facts": {"protection.load.lights.kind": "breaker"}, "about": "protection.load.lights", "verdict": "does_not_apply"},
	"one way": {"design": "meets", "facts": {"protection.array.south.two_way": false}, "about": "protection.array.south", "verdict": "does_not_apply"},
	"unknown protection.charger.main.two_way": {"design": "meets", "facts": {"protection.charger.main.two_way": null}, "about": "protection.charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, polarized.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
