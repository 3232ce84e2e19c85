package codebooks.us_2023.fine_strands_test

import data.codebooks.us_2023.fine_strands

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"listed": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "verdict": "meets"},
	"not listed": {"design": "meets", "facts": {"cable_run.bank.house.declared.us_2023.fine_strand_lugs": false}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"class 2": {"design": "meets", "facts": {"cable_run.bank.house.strand": "class_2", "cable_run.bank.house.declared.us_2023.fine_strand_lugs": false}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"AWG without a word": {"design": "meets", "facts": {}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"unknown cable_run.bank.house.declared.us_2023.fine_strand_lugs": {"design": "meets", "facts": {"cable_run.bank.house.declared.us_2023.fine_strand_lugs": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, fine_strands.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
