package codebooks.vehicle.auxiliary_battery_test

import data.codebooks.vehicle.auxiliary_battery

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.capacity": "60 Ah"}, "about": "bank.house", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"bank.house.capacity": "60.06 Ah"}, "about": "bank.house", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"bank.house.capacity": "59.94 Ah"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.capacity": null}, "about": "bank.house", "verdict": "unproven"},
	"not a vehicle (capacity)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "verdict": "does_not_apply"},
	"another standard (capacity)": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "bank.house", "verdict": "does_not_apply"},
	"standard silent (capacity)": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, auxiliary_battery.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
