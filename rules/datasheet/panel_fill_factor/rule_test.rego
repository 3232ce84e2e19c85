package codebooks.datasheet.panel_fill_factor_test

import data.codebooks.datasheet.panel_fill_factor

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.pmax": "164.268 W"}, "about": "panel.fen-200", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.pmax": "219.8664 W"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.pmax": "164.168 W"}, "about": "panel.fen-200", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.pmax": "219.9664 W"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.pmax": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"thin film: exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.pmax": "126.36 W"}, "about": "panel.fen-200", "verdict": "meets"},
	"thin film: exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.pmax": "214.812 W"}, "about": "panel.fen-200", "verdict": "meets"},
	"thin film: a step below": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.pmax": "126.26 W"}, "about": "panel.fen-200", "verdict": "breaks"},
	"thin film: a step above": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.pmax": "214.912 W"}, "about": "panel.fen-200", "verdict": "breaks"},
	"thin film: unknown": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.pmax": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.technology": {"design": "meets", "facts": {"panel.fen-200.technology": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"thin film may be lower": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film", "panel.fen-200.pmax": "130 W"}, "about": "panel.fen-200", "verdict": "meets"},
	"crystalline may not": {"design": "meets", "facts": {"panel.fen-200.pmax": "130 W"}, "about": "panel.fen-200", "verdict": "breaks"},
	"a published module: 200 W, 32.9 V, 8.21 A": {"design": "meets", "facts": {"panel.fen-200.voc": "32.9 V", "panel.fen-200.isc": "8.21 A", "panel.fen-200.pmax": "200 W"}, "about": "panel.fen-200", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_fill_factor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
