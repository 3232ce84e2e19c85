package codebooks.us_2023.ventilation_test

import data.codebooks.us_2023.ventilation

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"ventilated": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"not": {"design": "meets", "facts": {"bank.house.declared.us_2023.ventilated": false}, "about": "bank.house", "verdict": "breaks"},
	"unknown bank.house.declared.us_2023.ventilated": {"design": "meets", "facts": {"bank.house.declared.us_2023.ventilated": null}, "about": "bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, ventilation.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
