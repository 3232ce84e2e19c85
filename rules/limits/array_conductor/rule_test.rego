package codebooks.limits.array_conductor_test

import data.codebooks.limits.array_conductor

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"described": {"design": "meets", "facts": {}, "about": "array.south", "verdict": "meets"},
	"not described": {"design": "breaks", "facts": {}, "about": "array.south", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, array_conductor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
