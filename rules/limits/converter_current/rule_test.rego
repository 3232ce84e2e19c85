package codebooks.limits.converter_current_test

import data.codebooks.limits.converter_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"supply.twelve.load_current": "20 A"}, "about": "supply.twelve", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"supply.twelve.load_current": "19.998 A"}, "about": "supply.twelve", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"supply.twelve.load_current": "20.002 A"}, "about": "supply.twelve", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"supply.twelve.load_current": null}, "about": "supply.twelve", "verdict": "unproven"},
	"unknown load.radio.power": {"design": "meets", "facts": {"load.radio.power": null}, "about": "supply.twelve", "verdict": "unproven"},
	"unknown converter.rush-20.current": {"design": "meets", "facts": {"converter.rush-20.current": null}, "about": "supply.twelve", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, converter_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
