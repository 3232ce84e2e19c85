package codebooks.datasheet.inverter_surge_test

import data.codebooks.datasheet.inverter_surge

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"inverter.sedge-1500.surge": "1500 W"}, "about": "inverter.sedge-1500", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"inverter.sedge-1500.surge": "1500.15 W"}, "about": "inverter.sedge-1500", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"inverter.sedge-1500.surge": "1499.85 W"}, "about": "inverter.sedge-1500", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"inverter.sedge-1500.surge": null}, "about": "inverter.sedge-1500", "verdict": "unproven"},
	"unknown inverter.sedge-1500.continuous": {"design": "meets", "facts": {"inverter.sedge-1500.continuous": null}, "about": "inverter.sedge-1500", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, inverter_surge.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
