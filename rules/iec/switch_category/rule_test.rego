package codebooks.iec.switch_category_test

import data.codebooks.iec.switch_category

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"PV2": {"design": "meets", "facts": {}, "about": "disconnect.array.south", "verdict": "meets"},
	"PV1, three strings": {"design": "meets", "facts": {"disconnect.array.south.declared.iec.category": "PV1"}, "about": "disconnect.array.south", "verdict": "breaks"},
	"PV1, one string": {"design": "meets", "facts": {"disconnect.array.south.declared.iec.category": "PV1", "pv_input.main.1.parallel_strings": 1}, "about": "disconnect.array.south", "verdict": "meets"},
	"PV1, two strings": {"design": "meets", "facts": {"disconnect.array.south.declared.iec.category": "PV1", "pv_input.main.1.parallel_strings": 2}, "about": "disconnect.array.south", "verdict": "breaks"},
	"PV0, one string": {"design": "meets", "facts": {"disconnect.array.south.declared.iec.category": "PV0", "pv_input.main.1.parallel_strings": 1}, "about": "disconnect.array.south", "verdict": "breaks"},
	"DC-21B": {"design": "meets", "facts": {"disconnect.array.south.declared.iec.category": "DC21B"}, "about": "disconnect.array.south", "verdict": "meets"},
	"DC-22B": {"design": "meets", "facts": {"disconnect.array.south.declared.iec.category": "DC22B"}, "about": "disconnect.array.south", "verdict": "meets"},
	"silent": {"design": "meets", "facts": {"disconnect.array.south.declared.iec.category": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"the bank's": {"design": "meets", "facts": {}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, switch_category.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
