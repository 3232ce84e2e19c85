package codebooks.limits.precharge_test

import data.codebooks.limits.precharge

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"battery.peat-100.bms.precharge": true}, "about": "ac_output.cabin", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"battery.peat-100.bms.precharge": false}, "about": "ac_output.cabin", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"battery.peat-100.bms.precharge": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded"}, "about": "ac_output.cabin", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, precharge.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
