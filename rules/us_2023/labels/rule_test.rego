package codebooks.us_2023.labels_test

import data.codebooks.us_2023.labels

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"planned": {"design": "meets", "facts": {}, "about": "array.south", "verdict": "meets"},
	"not": {"design": "meets", "facts": {"array.south.declared.us_2023.labels": false}, "about": "array.south", "verdict": "breaks"},
	"unknown array.south.declared.us_2023.labels": {"design": "meets", "facts": {"array.south.declared.us_2023.labels": null}, "about": "array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, labels.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# The highest dc voltage stands beside the verdict: it goes on the label (690.7(D)).
test_voltage_shown if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, labels.check, {"system.dc_voltage_max": "131 V", "system.pv_voltage_max": "97 V"}) with input as system
	[131] == [x | some v in verdicts; v.about == "array.south"; some x in v.also]
}
