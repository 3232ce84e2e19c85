package codebooks.practice.unlike_panels_test

import data.codebooks.practice.unlike_panels

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.mismatch_loss": "3 %"}, "about": "pv_input.main.1", "which": "loss", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.mismatch_loss": "2.9997 %"}, "about": "pv_input.main.1", "which": "loss", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.mismatch_loss": "3.0003 %"}, "about": "pv_input.main.1", "which": "loss", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.mismatch_loss": null}, "about": "pv_input.main.1", "which": "loss", "verdict": "unproven"},
	"one maximum": {"design": "meets", "facts": {"pv_input.main.1.maxima_count": "1"}, "about": "pv_input.main.1", "which": "maxima", "verdict": "meets"},
	"two maxima": {"design": "meets", "facts": {"pv_input.main.1.maxima_count": "2"}, "about": "pv_input.main.1", "which": "maxima", "verdict": "breaks"},
	"unknown maxima": {"design": "meets", "facts": {"pv_input.main.1.maxima_count": null}, "about": "pv_input.main.1", "which": "maxima", "verdict": "unproven"},
	"unknown imp": {"design": "breaks", "facts": {"panel.fen-200.imp": null}, "about": "pv_input.main.1", "which": "loss", "verdict": "unproven"},
	"unknown cells": {"design": "breaks", "facts": {"panel.fen-200.cells": null}, "about": "pv_input.main.1", "which": "loss", "verdict": "unproven"},
	"the limit is its own": {"design": "meets", "facts": {"pv_input.main.1.mismatch_loss": "2 %", "param.practice.mismatch_max": "2 %", "param.practice.voltage_drop_max": "1 %"}, "about": "pv_input.main.1", "which": "loss", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, unlike_panels.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
