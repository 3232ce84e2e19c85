package codebooks.iec.shrouded_terminals_test

import data.codebooks.iec.shrouded_terminals

# Worked: 24 cells, 57.6 V, -5 mV/K a cell, 5 degC: 57.6 + 24 x 0.005 x 20 = 60.00 V.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"shrouded": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"bare": {"design": "meets", "facts": {"bank.house.declared.iec.terminals_shrouded": false}, "about": "bank.house", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"bank.house.declared.iec.terminals_shrouded": null}, "about": "bank.house", "verdict": "unproven"},
	"exactly 60 V: 24 cells at 57.6 V compensated to 5 degC": {"design": "meets", "facts": {"charger.main.settings.equalize": false, "charger.main.settings.temperature_compensation": "-5 mV/K", "bank.house.declared.iec.terminals_shrouded": false}, "about": "bank.house", "verdict": "does_not_apply"},
	"a step above: compensated to 4.9 degC": {"design": "meets", "facts": {"charger.main.settings.equalize": false, "charger.main.settings.temperature_compensation": "-5 mV/K", "bank.house.coldest": "4.9 degC", "bank.house.declared.iec.terminals_shrouded": false}, "about": "bank.house", "verdict": "breaks"},
	"16 iron-phosphate cells at 58.4 V": {"design": "meets", "facts": {"bank.house.voltage_max": "58.4 V", "bank.house.declared.iec.terminals_shrouded": false}, "about": "bank.house", "verdict": "does_not_apply"},
	"voltage unknown": {"design": "meets", "facts": {"bank.house.voltage_max": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, shrouded_terminals.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
