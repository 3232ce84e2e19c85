package codebooks.datasheet.panel_voltage_test

import data.codebooks.datasheet.panel_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"panel.fen-200.vmp": "22.356 V"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.vmp": "22.3537644 V"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.vmp": "22.3582356 V"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.vmp": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.voc": {"design": "meets", "facts": {"panel.fen-200.voc": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"a published module: 26.3 V of 32.9 V": {"design": "meets", "facts": {"panel.fen-200.vmp": "26.3 V", "panel.fen-200.voc": "32.9 V"}, "about": "panel.fen-200", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
