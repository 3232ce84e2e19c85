package codebooks.iec.voltage_ceiling_test

import data.codebooks.iec.voltage_ceiling

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "1000 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "999 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "1001 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"on the ground: exactly at the limit": {"design": "meets", "facts": {"site.place": "ground", "pv_input.main.1.voc_cold": "1500 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"on the ground: a step inside": {"design": "meets", "facts": {"site.place": "ground", "pv_input.main.1.voc_cold": "1498.5 V"}, "about": "pv_input.main.1", "verdict": "meets"},
	"on the ground: a step beyond": {"design": "meets", "facts": {"site.place": "ground", "pv_input.main.1.voc_cold": "1501.5 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"on the ground: unknown": {"design": "meets", "facts": {"site.place": "ground", "pv_input.main.1.voc_cold": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"place unknown, 1000 V": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "1000 V", "site.place": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"place unknown, 1501 V": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "1501 V", "site.place": null}, "about": "pv_input.main.1", "verdict": "breaks"},
	"a country that allows 600 V in dwellings": {"design": "meets", "facts": {"param.iec.building_voltage_max": "600 V", "pv_input.main.1.voc_cold": "601 V"}, "about": "pv_input.main.1", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, voltage_ceiling.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
