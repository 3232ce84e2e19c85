package codebooks.us_2023.frames_bonded_test

import data.codebooks.us_2023.frames_bonded

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"bonded": {"design": "meets", "facts": {}, "about": "grounding", "verdict": "meets"},
	"not": {"design": "meets", "facts": {"grounding.frames_bonded": false}, "about": "grounding", "verdict": "breaks"},
	"unknown grounding.frames_bonded": {"design": "meets", "facts": {"grounding.frames_bonded": null}, "about": "grounding", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "grounding", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, frames_bonded.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Without an array there is no frame.
test_no_array if {
	system := test.facts("meets")
	dark := object.union(system, {"arrays": []})
	verdicts := test.verdicts(dark, frames_bonded.check, {"grounding.frames_bonded": false}) with input as dark
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "grounding"]
	count(frames_bonded.check) == 1 with input as dark
}
