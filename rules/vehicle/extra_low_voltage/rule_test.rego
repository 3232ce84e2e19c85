package codebooks.vehicle.extra_low_voltage_test

import data.codebooks.vehicle.extra_low_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"system.dc_voltage_max": "120 V"}, "about": "system", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"system.dc_voltage_max": "119.88 V"}, "about": "system", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"system.dc_voltage_max": "120.12 V"}, "about": "system", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"system.dc_voltage_max": null}, "about": "system", "verdict": "unproven"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "system", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "system", "verdict": "unproven"},
	"another standard": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "system", "verdict": "does_not_apply"},
	"standard silent": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "system", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, extra_low_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
