package codebooks.limits.load_terminals_surge_test

import data.codebooks.limits.load_terminals_surge

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"load.porch.surge_current": "20 A"}, "about": "load.porch", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"load.porch.surge_current": "19.998 A"}, "about": "load.porch", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"load.porch.surge_current": "20.002 A"}, "about": "load.porch", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"load.porch.surge_current": null}, "about": "load.porch", "verdict": "unproven"},
	"unknown load.porch.surge": {"design": "meets", "facts": {"load.porch.surge": null}, "about": "load.porch", "verdict": "unproven"},
	"on the bank": {"design": "meets", "facts": {}, "about": "load.lights", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, load_terminals_surge.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
