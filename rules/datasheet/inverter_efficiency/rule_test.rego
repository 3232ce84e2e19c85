package codebooks.datasheet.inverter_efficiency_test

import data.codebooks.datasheet.inverter_efficiency

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"inverter.sedge-1500.efficiency": "70 %"}, "about": "inverter.sedge-1500", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"inverter.sedge-1500.efficiency": "99.5 %"}, "about": "inverter.sedge-1500", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"inverter.sedge-1500.efficiency": "69.99 %"}, "about": "inverter.sedge-1500", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"inverter.sedge-1500.efficiency": "99.51 %"}, "about": "inverter.sedge-1500", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"inverter.sedge-1500.efficiency": null}, "about": "inverter.sedge-1500", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, inverter_efficiency.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
