package codebooks.datasheet.panel_current_test

import data.codebooks.datasheet.panel_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"panel.fen-200.imp": "10.192 A"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.imp": "10.1909808 A"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.imp": "10.1930192 A"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.imp": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.isc": {"design": "meets", "facts": {"panel.fen-200.isc": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"a published module: 7.61 A of 8.21 A": {"design": "meets", "facts": {"panel.fen-200.imp": "7.61 A", "panel.fen-200.isc": "8.21 A"}, "about": "panel.fen-200", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
