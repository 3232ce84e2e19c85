package codebooks.limits.frames_bonded_test

import data.codebooks.limits.frames_bonded

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"grounding.frames_bonded": true}, "about": "grounding", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"grounding.frames_bonded": false}, "about": "grounding", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"grounding.frames_bonded": null}, "about": "grounding", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, frames_bonded.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
