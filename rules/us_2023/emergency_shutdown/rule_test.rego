package codebooks.us_2023.emergency_shutdown_test

import data.codebooks.us_2023.emergency_shutdown

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"with": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"without": {"design": "meets", "facts": {"bank.house.declared.us_2023.emergency_shutdown": false}, "about": "bank.house", "verdict": "breaks"},
	"no dwelling": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": "other", "bank.house.declared.us_2023.emergency_shutdown": null}, "about": "bank.house", "verdict": "does_not_apply"},
	"unknown bank.house.declared.us_2023.emergency_shutdown": {"design": "meets", "facts": {"bank.house.declared.us_2023.emergency_shutdown": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown site.declared.us_2023.occupancy": {"design": "meets", "facts": {"site.declared.us_2023.occupancy": null}, "about": "bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, emergency_shutdown.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
