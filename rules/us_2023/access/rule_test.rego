package codebooks.us_2023.access_test

import data.codebooks.us_2023.access

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"within reach and open": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.readily_accessible": true}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"within reach, 30 V": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.readily_accessible": true, "string.south.a.voc_cold": "30 V"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"within reach, 30.1 V": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.readily_accessible": true, "string.south.a.voc_cold": "30.1 V"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"within reach in a raceway": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.readily_accessible": true, "cable_run.string.south.a.declared.us_2023.raceway": "nonmetallic"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"below ground": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.readily_accessible": true, "cable_run.string.south.a.method": "direct_buried"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"a bank's": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"unknown cable_run.string.south.a.declared.us_2023.readily_accessible": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.readily_accessible": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, access.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
