package codebooks.us_2023.disconnect_distance_test

import data.codebooks.us_2023.disconnect_distance

# 10 ft (3 m) from memory; doubtful.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"disconnect.array.south.declared.us_2023.distance_to_equipment": "3 m"}, "about": "disconnect.array.south", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"disconnect.array.south.declared.us_2023.distance_to_equipment": "2.9997 m"}, "about": "disconnect.array.south", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"disconnect.array.south.declared.us_2023.distance_to_equipment": "3.0003 m"}, "about": "disconnect.array.south", "verdict": "breaks"},
	"unknown disconnect.array.south.declared.us_2023.distance_to_equipment": {"design": "meets", "facts": {"disconnect.array.south.declared.us_2023.distance_to_equipment": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.array.south", "verdict": "does_not_apply"},
	"a bank's": {"design": "meets", "facts": {}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_distance.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
