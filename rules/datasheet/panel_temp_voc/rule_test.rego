package codebooks.datasheet.panel_temp_voc_test

import data.codebooks.datasheet.panel_temp_voc

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.temp_voc": "-0.45 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.temp_voc": "-0.2 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.temp_voc": "-0.45025 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.temp_voc": "-0.19975 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.temp_voc": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"thin film: exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_voc": "-0.5 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"thin film: exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_voc": "-0.1 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"thin film: a step below": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_voc": "-0.5004 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"thin film: a step above": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_voc": "-0.0996 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"thin film: unknown": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_voc": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.technology": {"design": "meets", "facts": {"panel.fen-200.technology": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"no minus sign": {"design": "meets", "facts": {"panel.fen-200.temp_voc": "0.26 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"a zero too many": {"design": "meets", "facts": {"panel.fen-200.temp_voc": "-0.026 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"a published module: -0.123 V/K of 32.9 V": {"design": "meets", "facts": {"panel.fen-200.temp_voc": "-0.37386 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"thin film": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_voc": "-0.15 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_temp_voc.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
