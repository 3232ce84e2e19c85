package codebooks.limits.source_protection_test

import data.codebooks.limits.source_protection

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"with one": {"design": "meets", "facts": {}, "about": "charge_source.engine", "verdict": "meets"},
	"without": {"design": "breaks", "facts": {}, "about": "charge_source.engine", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, source_protection.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
