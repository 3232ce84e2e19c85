package codebooks.datasheet.panel_coefficients_test

import data.codebooks.datasheet.panel_coefficients

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"panel.fen-200.temp_pmax": "-0.26 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.temp_pmax": "-0.261 %/K"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.temp_pmax": "-0.259 %/K"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.temp_pmax": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.temp_voc": {"design": "meets", "facts": {"panel.fen-200.temp_voc": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"thin film": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film"}, "about": "panel.fen-200", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_coefficients.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
