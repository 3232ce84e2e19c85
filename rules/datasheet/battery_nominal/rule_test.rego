package codebooks.datasheet.battery_nominal_test

import data.codebooks.datasheet.battery_nominal

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the lower end": {"design": "meets", "facts": {"battery.peat-100.nominal": "24 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"exactly at the upper end": {"design": "meets", "facts": {"battery.peat-100.nominal": "26.8 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"battery.peat-100.nominal": "23.99 V"}, "about": "battery.peat-100", "verdict": "breaks"},
	"a step above": {"design": "meets", "facts": {"battery.peat-100.nominal": "26.81 V"}, "about": "battery.peat-100", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"battery.peat-100.nominal": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.cells": {"design": "meets", "facts": {"battery.peat-100.cells": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.chemistry": {"design": "meets", "facts": {"battery.peat-100.chemistry": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"six lead cells of 2 V": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded", "battery.peat-100.cells": 6, "battery.peat-100.nominal": "12 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"sixteen iron-phosphate cells, 51.2 V": {"design": "meets", "facts": {"battery.peat-100.cells": 16, "battery.peat-100.nominal": "51.2 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"seven nmc cells, 25.9 V": {"design": "meets", "facts": {"battery.peat-100.chemistry": "nmc", "battery.peat-100.cells": 7, "battery.peat-100.nominal": "25.9 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"eight sodium-ion cells, 24.8 V": {"design": "meets", "facts": {"battery.peat-100.chemistry": "sodium_ion", "battery.peat-100.nominal": "24.8 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"iron-phosphate cells taken for lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "battery.peat-100", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_nominal.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
