package codebooks.limits.converter_pole_test

import data.codebooks.limits.converter_pole

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"grounded negative": {"design": "meets", "facts": {}, "about": "supply.twelve", "verdict": "meets"},
	"grounded positive, not isolated": {"design": "meets", "facts": {"grounding.dc": "positive"}, "about": "supply.twelve", "verdict": "breaks"},
	"grounded positive, isolated": {"design": "meets", "facts": {"grounding.dc": "positive", "converter.rush-20.isolated": true}, "about": "supply.twelve", "verdict": "meets"},
	"grounded positive, silent": {"design": "meets", "facts": {"grounding.dc": "positive", "converter.rush-20.isolated": null}, "about": "supply.twelve", "verdict": "unproven"},
	"silent on ground": {"design": "meets", "facts": {"grounding.dc": null}, "about": "supply.twelve", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, converter_pole.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
