package codebooks.us_2023.parallel_conductors_test

import data.codebooks.us_2023.parallel_conductors

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"1/0 AWG": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "verdict": "meets"},
	"53.48 mm2, as printed": {"design": "meets", "facts": {"cable_run.bank.house.size": "53.48 mm2"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"1 AWG": {"design": "meets", "facts": {"cable_run.bank.house.size": "1 AWG"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"53.2 mm2": {"design": "meets", "facts": {"cable_run.bank.house.size": "53.2 mm2"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"one conductor": {"design": "meets", "facts": {"cable_run.bank.house.per_pole": 1, "cable_run.bank.house.size": "1 AWG"}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"unknown cable_run.bank.house.size": {"design": "meets", "facts": {"cable_run.bank.house.size": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"two of 1/0 AWG for each pole": {"design": "meets", "facts": {"cable_run.bank.house.per_pole": 2}, "about": "cable_run.bank.house", "verdict": "meets"},
	"the area counts, however the size is written": {"design": "meets", "facts": {"cable_run.bank.house.area": "53.2 mm2"}, "about": "cable_run.bank.house", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, parallel_conductors.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
