package codebooks.us_2023.array_disconnect_test

import data.codebooks.us_2023.array_disconnect

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a fuse is no switch": {"design": "meets", "facts": {"protection.array.south.kind": "fuse"}, "about": "array.south", "verdict": "breaks"},
	"nothing, on a boat": {"design": "breaks", "facts": {"site.place": "boat"}, "about": "array.south", "verdict": "does_not_apply"},
	"a breaker of one direction alone": {"design": "meets", "facts": {"protection.array.south.polarized": true}, "about": "array.south", "verdict": "breaks"},
	"whether current may pass both ways unknown": {"design": "meets", "facts": {"protection.array.south.polarized": null}, "about": "array.south", "verdict": "unproven"},
	"a breaker of one pole": {"design": "meets", "facts": {"protection.array.south.poles": "1"}, "about": "array.south", "verdict": "breaks"},
	"a breaker of two poles": {"design": "meets", "facts": {"protection.array.south.poles": "2"}, "about": "array.south", "verdict": "meets"},
	"a breaker of one pole, the other solidly grounded": {"design": "meets", "facts": {"protection.array.south.poles": "1", "grounding.dc": "negative", "grounding.ground_fault_protection": false}, "about": "array.south", "verdict": "meets"},
	"how many poles unknown": {"design": "meets", "facts": {"protection.array.south.poles": null}, "about": "array.south", "verdict": "unproven"},
	"with a two-way breaker": {"design": "meets", "facts": {}, "about": "array.south", "verdict": "meets"},
	"nothing at all": {"design": "breaks", "facts": {}, "about": "array.south", "verdict": "breaks"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, array_disconnect.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
