package codebooks.limits.bank_voltage_setting_test

import data.codebooks.limits.bank_voltage_setting

# A 25.6 V bank against a 24 V setting meets: the system voltage is what settings go by.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"25.6 V bank, 24 V setting": {"design": "meets", "facts": {}, "about": "charger.main", "verdict": "meets"},
	"12 V setting": {"design": "meets", "facts": {"charger.main.settings.bank_voltage": "12 V"}, "about": "charger.main", "verdict": "breaks"},
	"48 V setting": {"design": "meets", "facts": {"charger.main.settings.bank_voltage": "48 V"}, "about": "charger.main", "verdict": "breaks"},
	"unknown charger.main.settings.bank_voltage": {"design": "meets", "facts": {"charger.main.settings.bank_voltage": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown battery.peat-100.nominal": {"design": "meets", "facts": {"battery.peat-100.nominal": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_voltage_setting.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
