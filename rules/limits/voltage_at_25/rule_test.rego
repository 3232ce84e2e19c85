package codebooks.limits.voltage_at_25_test

import data.codebooks.limits.voltage_at_25

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_stc": "140 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.voc_stc": "139.986 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.voc_stc": "140.014 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_stc": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown controller.reed-70.pv_voltage_max_25": {"design": "meets", "facts": {"controller.reed-70.pv_voltage_max_25": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown panel.fen-200.voc": {"design": "meets", "facts": {"panel.fen-200.voc": null}, "about": "pv_input.main.1", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, voltage_at_25.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
