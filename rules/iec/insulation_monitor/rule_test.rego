package codebooks.iec.insulation_monitor_test

import data.codebooks.iec.insulation_monitor

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"watched": {"design": "meets", "facts": {}, "about": "grounding", "verdict": "meets"},
	"not watched": {"design": "meets", "facts": {"grounding.declared.iec.insulation_monitor": false}, "about": "grounding", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"grounding.declared.iec.insulation_monitor": null}, "about": "grounding", "verdict": "unproven"},
	"earthed": {"design": "meets", "facts": {"grounding.dc": "negative", "grounding.declared.iec.insulation_monitor": false}, "about": "grounding", "verdict": "does_not_apply"},
	"exactly 60 V": {"design": "meets", "facts": {"system.pv_voltage_max": "60 V", "grounding.declared.iec.insulation_monitor": false}, "about": "grounding", "verdict": "does_not_apply"},
	"a step above 60 V": {"design": "meets", "facts": {"system.pv_voltage_max": "60.01 V", "grounding.declared.iec.insulation_monitor": false}, "about": "grounding", "verdict": "breaks"},
	"which pole unknown": {"design": "meets", "facts": {"grounding.dc": null}, "about": "grounding", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, insulation_monitor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
