package codebooks.datasheet.panel_series_fuse_test

import data.codebooks.datasheet.panel_series_fuse

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"panel.fen-200.max_series_fuse": "13 A"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.max_series_fuse": "13.0013 A"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.max_series_fuse": "12.9987 A"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.max_series_fuse": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.isc": {"design": "meets", "facts": {"panel.fen-200.isc": null}, "about": "panel.fen-200", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_series_fuse.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
