package codebooks.datasheet.panel_power_test

import data.codebooks.datasheet.panel_power

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.imp": "9.8 A", "panel.fen-200.vmp": "20 V"}, "about": "panel.fen-200", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.imp": "9.8 A", "panel.fen-200.vmp": "20.8163265306 V"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.imp": "9.8 A", "panel.fen-200.vmp": "19.99 V"}, "about": "panel.fen-200", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.imp": "9.8 A", "panel.fen-200.vmp": "20.8263265306 V"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.imp": "9.8 A", "panel.fen-200.vmp": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.imp": {"design": "meets", "facts": {"panel.fen-200.imp": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.pmax": {"design": "meets", "facts": {"panel.fen-200.pmax": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"a published module: 26.3 V x 7.61 A, 200 W": {"design": "meets", "facts": {"panel.fen-200.vmp": "26.3 V", "panel.fen-200.imp": "7.61 A", "panel.fen-200.pmax": "200 W"}, "about": "panel.fen-200", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_power.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
