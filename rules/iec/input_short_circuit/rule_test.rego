package codebooks.iec.input_short_circuit_test

import data.codebooks.iec.input_short_circuit

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.isc_stc": "40 A"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"pv_input.main.1.isc_stc": "39.96 A"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"pv_input.main.1.isc_stc": "40.04 A"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.isc_stc": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown controller.reed-70.pv_short_circuit_max": {"design": "meets", "facts": {"controller.reed-70.pv_short_circuit_max": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown panel.fen-200.isc": {"design": "meets", "facts": {"panel.fen-200.isc": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"KI 1.5 for panels that take light from behind": {"design": "meets", "facts": {"pv_input.main.1.isc_stc": "40 A", "param.iec.ki": 1.5}, "about": "pv_input.main.1", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, input_short_circuit.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
