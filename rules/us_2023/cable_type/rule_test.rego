package codebooks.us_2023.cable_type_test

import data.codebooks.us_2023.cable_type

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"USE-2 that is RHW-2": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "use2_rhw2"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"THWN-2": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "thwn2"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"a cable of several cores": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "other", "cable_run.string.south.a.cores": "multi"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"in the earth": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "other", "cable_run.string.south.a.method": "direct_buried"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"THWN-2 in a raceway": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "thwn2", "cable_run.string.south.a.declared.us_2023.raceway": "nonmetallic"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"indoors": {"design": "meets", "facts": {}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"unknown cable_run.string.south.a.declared.us_2023.cable_type": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"unknown cable_run.string.south.a.indoors": {"design": "meets", "facts": {"cable_run.string.south.a.indoors": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cable_type.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
