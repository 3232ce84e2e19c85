package codebooks.fell_county.design_cold_test

import data.codebooks.fell_county.design_cold

# Each case: the facts put in place of the design's own, and the verdict owed.
cases := {
	"exactly the county's figure": {"facts": {"site.coldest": "-29 degC"}, "about": "site", "verdict": "meets"},
	"a step colder": {"facts": {"site.coldest": "-29.1 degC"}, "about": "site", "verdict": "meets"},
	"a step warmer": {"facts": {"site.coldest": "-28.9 degC"}, "about": "site", "verdict": "breaks"},
	"unknown": {"facts": {"site.coldest": null}, "about": "site", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts("meets")
	verdicts := test.verdicts(system, design_cold.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about]
}

# A system without an array has no voltage that a cold morning raises.
test_no_array if {
	system := test.facts("meets")
	dark := object.union(system, {"arrays": []})
	verdicts := test.verdicts(dark, design_cold.check, {}) with input as dark
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "site"]
	count(design_cold.check) == 1 with input as dark
}

# A system with one is judged alone: no second record says that there is none.
test_one_record if {
	system := test.facts("meets")
	count(design_cold.check) == 1 with input as system
}
