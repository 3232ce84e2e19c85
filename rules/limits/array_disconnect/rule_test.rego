package codebooks.limits.array_disconnect_test

import data.codebooks.limits.array_disconnect

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a switch": {"design": "meets", "facts": {}, "about": "array.south", "verdict": "meets"},
	"neither switch nor protection": {"design": "breaks", "facts": {}, "about": "array.west", "verdict": "breaks"},
	"a fuse only": {"design": "breaks", "facts": {"protection.array.south.kind": "fuse"}, "about": "array.south", "verdict": "breaks"},
	"a breaker only": {"design": "breaks", "facts": {"protection.array.south.kind": "breaker"}, "about": "array.south", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, array_disconnect.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
