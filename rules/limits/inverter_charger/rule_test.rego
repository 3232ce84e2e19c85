package codebooks.limits.inverter_charger_test

import data.codebooks.limits.inverter_charger

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a charger with a source": {"design": "meets", "facts": {"inverter.sedge-1500.charge_current_max": "35 A"}, "about": "ac_output.cabin", "verdict": "meets"},
	"a charger whose bank an engine charges": {"design": "meets", "facts": {"inverter.sedge-1500.charge_current_max": "35 A", "charge_source.engine.declared.limits.through_inverter": false}, "about": "ac_output.cabin", "verdict": "breaks"},
	"a charger and a source, of what unknown": {"design": "meets", "facts": {"inverter.sedge-1500.charge_current_max": "35 A", "charge_source.engine.declared.limits.through_inverter": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"a charger without one": {"design": "breaks", "facts": {"inverter.sedge-1500.charge_current_max": "0.001 A"}, "about": "ac_output.cabin", "verdict": "breaks"},
	"it only inverts": {"design": "breaks", "facts": {"inverter.sedge-1500.charge_current_max": "0 A"}, "about": "ac_output.cabin", "verdict": "does_not_apply"},
	"it only inverts, with a source": {"design": "meets", "facts": {"inverter.sedge-1500.charge_current_max": "0 A"}, "about": "ac_output.cabin", "verdict": "does_not_apply"},
	"unknown": {"design": "meets", "facts": {"inverter.sedge-1500.charge_current_max": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"unknown, without a source": {"design": "breaks", "facts": {"inverter.sedge-1500.charge_current_max": null}, "about": "ac_output.cabin", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, inverter_charger.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
