package codebooks.iec.string_fuse_class_test

import data.codebooks.iec.string_fuse_class

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"gPV": {"design": "meets", "facts": {}, "about": "protection.string.south.a", "verdict": "meets"},
	"gG": {"design": "meets", "facts": {"protection.string.south.a.class": "gG"}, "about": "protection.string.south.a", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"protection.string.south.a.class": null}, "about": "protection.string.south.a", "verdict": "unproven"},
	"a breaker": {"design": "meets", "facts": {}, "about": "protection.array.south", "verdict": "does_not_apply"},
	"bank's side": {"design": "meets", "facts": {}, "about": "protection.charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, string_fuse_class.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
