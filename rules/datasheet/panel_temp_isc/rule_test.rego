package codebooks.datasheet.panel_temp_isc_test

import data.codebooks.datasheet.panel_temp_isc

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.temp_isc": "0.01 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.temp_isc": "0.12 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.temp_isc": "0.00995 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.temp_isc": "0.12005 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.temp_isc": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"thin film: exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_isc": "-0.05 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"thin film: exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_isc": "0.12 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"thin film: a step below": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_isc": "-0.05017 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"thin film: a step above": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_isc": "0.12017 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"thin film: unknown": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_isc": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.technology": {"design": "meets", "facts": {"panel.fen-200.technology": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"a published module: 0.0032 A/K of 8.21 A": {"design": "meets", "facts": {"panel.fen-200.temp_isc": "0.038977 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_temp_isc.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
