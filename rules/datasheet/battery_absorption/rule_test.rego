package codebooks.datasheet.battery_absorption_test

import data.codebooks.datasheet.battery_absorption

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.absorption_max": "29.2 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"battery.peat-100.absorption_max": "29.19708 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"battery.peat-100.absorption_max": "29.20292 V"}, "about": "battery.peat-100", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"battery.peat-100.absorption_max": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.cells": {"design": "meets", "facts": {"battery.peat-100.cells": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"unknown battery.peat-100.chemistry": {"design": "meets", "facts": {"battery.peat-100.chemistry": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"12 V lead at 14.4 V, 2.40 V a cell": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded", "battery.peat-100.cells": 6, "battery.peat-100.absorption_max": "14.4 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"gel at 14.8 V": {"design": "meets", "facts": {"battery.peat-100.chemistry": "gel", "battery.peat-100.cells": 6, "battery.peat-100.absorption_max": "14.8 V"}, "about": "battery.peat-100", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_absorption.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
