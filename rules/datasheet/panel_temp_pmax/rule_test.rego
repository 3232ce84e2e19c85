package codebooks.datasheet.panel_temp_pmax_test

import data.codebooks.datasheet.panel_temp_pmax

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.temp_pmax": "-0.55 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.temp_pmax": "-0.2 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.temp_pmax": "-0.55035 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.temp_pmax": "-0.19965 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.temp_pmax": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"thin film: exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_pmax": "-0.55 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"thin film: exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_pmax": "-0.1 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"thin film: a step below": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_pmax": "-0.55045 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"thin film: a step above": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_pmax": "-0.09955 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"thin film: unknown": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.temp_pmax": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.technology": {"design": "meets", "facts": {"panel.fen-200.technology": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"no minus sign": {"design": "meets", "facts": {"panel.fen-200.temp_pmax": "0.34 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_temp_pmax.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
