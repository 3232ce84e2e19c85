package codebooks.limits.system_voltage_test

import data.codebooks.limits.system_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "1000 V"}, "about": "string.south.a", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "999.9 V"}, "about": "string.south.a", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "1000.1 V"}, "about": "string.south.a", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "string.south.a", "verdict": "unproven"},
	"unknown panel.fen-200.max_system_voltage": {"design": "meets", "facts": {"panel.fen-200.max_system_voltage": null}, "about": "string.south.a", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, system_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
