package codebooks.limits.pv_short_circuit_test

import data.codebooks.limits.pv_short_circuit

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.isc_max": "50 A"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.isc_max": "49.995 A"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.isc_max": "50.005 A"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.isc_max": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown controller.reed-70.pv_short_circuit_max": {"design": "meets", "facts": {"controller.reed-70.pv_short_circuit_max": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown panel.fen-200.isc": {"design": "meets", "facts": {"panel.fen-200.isc": null}, "about": "pv_input.main.1", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, pv_short_circuit.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
