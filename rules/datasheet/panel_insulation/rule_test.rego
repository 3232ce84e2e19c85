package codebooks.datasheet.panel_insulation_test

import data.codebooks.datasheet.panel_insulation

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"panel.fen-200.max_system_voltage": "48.6 V"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.max_system_voltage": "48.60486 V"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.max_system_voltage": "48.59514 V"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.max_system_voltage": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.voc": {"design": "meets", "facts": {"panel.fen-200.voc": null}, "about": "panel.fen-200", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_insulation.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
