package codebooks.limits.load_protection_test

import data.codebooks.limits.load_protection

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"with one": {"design": "meets", "facts": {}, "about": "load.lights", "verdict": "meets"},
	"without": {"design": "breaks", "facts": {}, "about": "load.lights", "verdict": "breaks"},
	"on an inverter": {"design": "meets", "facts": {}, "about": "load.pump", "verdict": "does_not_apply"},
	"behind a converter": {"design": "meets", "facts": {}, "about": "load.radio", "verdict": "does_not_apply"},
	"on load terminals": {"design": "meets", "facts": {}, "about": "load.porch", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, load_protection.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
