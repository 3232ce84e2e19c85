package codebooks.limits.string_fuse_carries_test

import data.codebooks.limits.string_fuse_carries

# Published study notes (recomputed): Isc 11.2 A x 1.5625 = 17.5 A, next standard fuse 20 A.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"protection.string.south.a.rating": "16.224 A"}, "about": "string.south.a", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"protection.string.south.a.rating": "16.2256224 A"}, "about": "string.south.a", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"protection.string.south.a.rating": "16.2223776 A"}, "about": "string.south.a", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"protection.string.south.a.rating": null}, "about": "string.south.a", "verdict": "unproven"},
	"unknown panel.fen-200.isc": {"design": "meets", "facts": {"panel.fen-200.isc": null}, "about": "string.south.a", "verdict": "unproven"},
	"Isc 11.2 A, 20 A fuse": {"design": "meets", "facts": {"string.south.a.isc_stc": "11.2 A"}, "about": "string.south.a", "verdict": "meets"},
	"Isc 11.2 A, 15 A fuse": {"design": "meets", "facts": {"string.south.a.isc_stc": "11.2 A", "protection.string.south.a.rating": "15 A"}, "about": "string.south.a", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, string_fuse_carries.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# No fuse, nothing to carry.
test_no_fuse if {
	system := test.facts("meets")
	bare := object.union(system, {"strings": [object.union(s, {"protections": []}) | some s in system.strings]})
	verdicts := test.verdicts(bare, string_fuse_carries.check, {}) with input as bare
	{"does_not_apply"} == {v.verdict | some v in verdicts}
}
