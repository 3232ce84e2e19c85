package codebooks.datasheet.converter_efficiency_test

import data.codebooks.datasheet.converter_efficiency

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"converter.rush-20.efficiency": "70 %"}, "about": "converter.rush-20", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"converter.rush-20.efficiency": "99.5 %"}, "about": "converter.rush-20", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"converter.rush-20.efficiency": "69.99 %"}, "about": "converter.rush-20", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"converter.rush-20.efficiency": "99.51 %"}, "about": "converter.rush-20", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"converter.rush-20.efficiency": null}, "about": "converter.rush-20", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, converter_efficiency.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
