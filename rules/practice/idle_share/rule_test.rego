package codebooks.practice.idle_share_test

import data.codebooks.practice.idle_share

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"inverter.sedge-1500.idle": "12 W", "ac_output.cabin.hours_per_day": "24", "bank.house.daily_load": "720 Wh"}, "about": "ac_output.cabin", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"inverter.sedge-1500.idle": "12 W", "ac_output.cabin.hours_per_day": "24", "bank.house.daily_load": "720.1 Wh"}, "about": "ac_output.cabin", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"inverter.sedge-1500.idle": "12 W", "ac_output.cabin.hours_per_day": "24", "bank.house.daily_load": "719.9 Wh"}, "about": "ac_output.cabin", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.daily_load": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"unknown idle": {"design": "meets", "facts": {"inverter.sedge-1500.idle": null}, "about": "ac_output.cabin", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, idle_share.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
