package codebooks.practice.spare_voltage_test

import data.codebooks.practice.spare_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "145.631067961165 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "145.6 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "145.7 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown tolerance": {"design": "meets", "facts": {"panel.fen-200.tolerance": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown limit": {"design": "meets", "facts": {"controller.reed-70.pv_voltage_max": null}, "about": "pv_input.main.1", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, spare_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# A panel on another input counts for that one alone.
test_another_input if {
	system := test.facts("meets")
	other := [object.union(s, {"pv_input": {"id": "pv_input.other.1"}, "panels": [{"tolerance": i.mismatch_loss}]}) | some s in system.strings; some i in system.pv_inputs]
	both := object.union(system, {"strings": array.concat(system.strings, other)})
	verdicts := test.verdicts(both, spare_voltage.check, {"pv_input.main.1.mismatch_loss": "90 %"}) with input as both
	["meets"] == [v.verdict | some v in verdicts; v.about == "pv_input.main.1"]
}
