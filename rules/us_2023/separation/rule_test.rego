package codebooks.us_2023.separation_test

import data.codebooks.us_2023.separation

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"its own": {"design": "meets", "facts": {}, "about": "cable_run.array.south", "verdict": "meets"},
	"shared": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.shares_raceway": true}, "about": "cable_run.array.south", "verdict": "breaks"},
	"a bank's": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"unknown cable_run.array.south.declared.us_2023.shares_raceway": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.shares_raceway": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, separation.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
