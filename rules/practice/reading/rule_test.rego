package codebooks.practice.reading_test

import data.codebooks.practice.reading

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the upper end": {"design": "meets", "facts": {"reading.open.difference_share": "5 %"}, "about": "reading.open", "verdict": "meets"},
	"exactly at the lower end": {"design": "meets", "facts": {"reading.open.difference_share": "-5 %"}, "about": "reading.open", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"reading.open.difference_share": "5.001 %"}, "about": "reading.open", "verdict": "breaks"},
	"a step below": {"design": "meets", "facts": {"reading.open.difference_share": "-5.001 %"}, "about": "reading.open", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"reading.open.difference_share": null}, "about": "reading.open", "verdict": "unproven"},
	"unlit: exactly at the upper end": {"design": "meets", "facts": {"reading.open.with_irradiance": false, "reading.open.difference_share": "10 %"}, "about": "reading.open", "verdict": "meets"},
	"unlit: a step above": {"design": "meets", "facts": {"reading.open.with_irradiance": false, "reading.open.difference_share": "10.001 %"}, "about": "reading.open", "verdict": "breaks"},
	"unlit: a step below": {"design": "meets", "facts": {"reading.open.with_irradiance": false, "reading.open.difference_share": "-10.001 %"}, "about": "reading.open", "verdict": "breaks"},
	"on a whole array": {"design": "meets", "facts": {"reading.array.difference_share": "5.001 %"}, "about": "reading.array", "verdict": "breaks"},
	"on a controller input": {"design": "meets", "facts": {"reading.input.difference_share": "5.001 %"}, "about": "reading.input", "verdict": "breaks"},
	"on a bank": {"design": "meets", "facts": {}, "about": "reading.bank", "verdict": "does_not_apply"},
	"without the irradiance": {"design": "meets", "facts": {"reading.open.irradiance": null}, "about": "reading.open", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, reading.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
