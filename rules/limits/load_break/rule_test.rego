package codebooks.limits.load_break_test

import data.codebooks.limits.load_break

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"disconnect.array.south.load_break": true}, "about": "disconnect.array.south", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"disconnect.array.south.load_break": false}, "about": "disconnect.array.south", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"disconnect.array.south.load_break": null}, "about": "disconnect.array.south", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, load_break.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
