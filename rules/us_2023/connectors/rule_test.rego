package codebooks.us_2023.connectors_test

import data.codebooks.us_2023.connectors

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"no conductor": {"design": "breaks", "facts": {}, "about": "string.south.a", "verdict": "breaks"},
	"alike": {"design": "meets", "facts": {}, "about": "string.south.a", "verdict": "meets"},
	"unlike": {"design": "meets", "facts": {"cable_run.string.south.a.connector": "egret-4"}, "about": "string.south.a", "verdict": "breaks"},
	"unlike, listed to be mated": {"design": "meets", "facts": {"cable_run.string.south.a.connector": "egret-4", "array.south.declared.us_2023.connectors_intermatable": true}, "about": "string.south.a", "verdict": "does_not_apply"},
	"unknown cable_run.string.south.a.connector": {"design": "meets", "facts": {"cable_run.string.south.a.connector": null}, "about": "string.south.a", "verdict": "unproven"},
	"unknown panel.sage-330.connector": {"design": "meets", "facts": {"panel.sage-330.connector": null}, "about": "string.south.a", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "string.south.a", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, connectors.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
