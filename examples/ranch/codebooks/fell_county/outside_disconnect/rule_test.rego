package codebooks.fell_county.outside_disconnect_test

import data.codebooks.fell_county.outside_disconnect

# Each case: the facts put in place of the design's own, and the verdict owed.
cases := {
	"outside": {"facts": {}, "about": "array.south", "verdict": "meets"},
	"not": {"facts": {"array.south.declared.fell_county.outside_disconnect": false}, "about": "array.south", "verdict": "breaks"},
	"silent": {"facts": {"array.south.declared.fell_county.outside_disconnect": null}, "about": "array.south", "verdict": "unproven"},
	"on the ground": {"facts": {"site.place": "ground"}, "about": "array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts("meets")
	verdicts := test.verdicts(system, outside_disconnect.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about]
}
