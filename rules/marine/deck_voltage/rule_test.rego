package codebooks.marine.deck_voltage_test

import data.codebooks.marine.deck_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "60 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "59.94 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "60.06 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "pv_input.main.1", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "pv_input.main.1", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, deck_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
