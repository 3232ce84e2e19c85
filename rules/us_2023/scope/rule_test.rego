package codebooks.us_2023.scope_test

import data.codebooks.us_2023.scope

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a building": {"design": "meets", "facts": {}, "about": "site", "verdict": "meets"},
	"on the ground": {"design": "meets", "facts": {"site.place": "ground"}, "about": "site", "verdict": "meets"},
	"a vehicle, whose PV side it judges": {"design": "meets", "facts": {"site.place": "vehicle"}, "about": "site", "verdict": "meets"},
	"a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "site", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"site.place": null}, "about": "site", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, scope.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
