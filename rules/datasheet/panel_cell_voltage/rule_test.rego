package codebooks.datasheet.panel_cell_voltage_test

import data.codebooks.datasheet.panel_cell_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.voc": "20.52 V"}, "about": "panel.fen-200", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.voc": "27.36 V"}, "about": "panel.fen-200", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"panel.fen-200.voc": "20.51 V"}, "about": "panel.fen-200", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"panel.fen-200.voc": "27.37 V"}, "about": "panel.fen-200", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"panel.fen-200.voc": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"multicrystalline: exactly at the lower end": {"design": "meets", "facts": {"panel.fen-200.technology": "poly_si", "panel.fen-200.voc": "20.52 V"}, "about": "panel.fen-200", "verdict": "meets"},
	"multicrystalline: exactly at the upper end": {"design": "meets", "facts": {"panel.fen-200.technology": "poly_si", "panel.fen-200.voc": "24.48 V"}, "about": "panel.fen-200", "verdict": "meets"},
	"multicrystalline: a step below": {"design": "meets", "facts": {"panel.fen-200.technology": "poly_si", "panel.fen-200.voc": "20.51 V"}, "about": "panel.fen-200", "verdict": "breaks"},
	"multicrystalline: a step above": {"design": "meets", "facts": {"panel.fen-200.technology": "poly_si", "panel.fen-200.voc": "24.49 V"}, "about": "panel.fen-200", "verdict": "breaks"},
	"multicrystalline: unknown": {"design": "meets", "facts": {"panel.fen-200.technology": "poly_si", "panel.fen-200.voc": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"unknown panel.fen-200.cells": {"design": "meets", "facts": {"panel.fen-200.cells": null}, "about": "panel.fen-200", "verdict": "unproven"},
	"thin film": {"design": "meets", "facts": {"panel.fen-200.technology": "thin_film"}, "about": "panel.fen-200", "verdict": "does_not_apply"},
	"half cells counted one by one": {"design": "meets", "facts": {"panel.fen-200.cells": 72}, "about": "panel.fen-200", "verdict": "breaks"},
	"a published multicrystalline module: 32.9 V, 54 cells": {"design": "meets", "facts": {"panel.fen-200.technology": "poly_si", "panel.fen-200.voc": "32.9 V", "panel.fen-200.cells": 54}, "about": "panel.fen-200", "verdict": "meets"},
	"too much for a multicrystalline cell": {"design": "meets", "facts": {"panel.fen-200.technology": "poly_si", "panel.fen-200.voc": "24.6 V"}, "about": "panel.fen-200", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, panel_cell_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
