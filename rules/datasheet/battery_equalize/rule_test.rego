package codebooks.datasheet.battery_equalize_test

import data.codebooks.datasheet.battery_equalize

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.equalize_max": "28.8 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"battery.peat-100.equalize_max": "28.80288 V"}, "about": "battery.peat-100", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"battery.peat-100.equalize_max": "28.79712 V"}, "about": "battery.peat-100", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"battery.peat-100.equalize_max": null}, "about": "battery.peat-100", "verdict": "unproven"},
	"iron phosphate": {"design": "meets", "facts": {"battery.peat-100.chemistry": "lifepo4"}, "about": "battery.peat-100", "verdict": "does_not_apply"},
	"unknown battery.peat-100.chemistry": {"design": "meets", "facts": {"battery.peat-100.chemistry": null}, "about": "battery.peat-100", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_equalize.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
