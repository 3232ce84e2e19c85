package codebooks.limits.cold_charging_first_test

import data.codebooks.limits.cold_charging_first

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charger.main.settings.cold_charge_cutoff": "0 degC"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charger.main.settings.cold_charge_cutoff": "0.1 degC"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.settings.cold_charge_cutoff": "-0.1 degC"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.settings.cold_charge_cutoff": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown battery.peat-100.bms.cold_charge_cutoff": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": null}, "about": "charger.main", "verdict": "unproven"},
	"exactly warm enough": {"design": "meets", "facts": {"bank.house.coldest": "0 degC"}, "about": "charger.main", "verdict": "does_not_apply"},
	"never so cold": {"design": "meets", "facts": {"bank.house.coldest": "5 degC"}, "about": "charger.main", "verdict": "does_not_apply"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded"}, "about": "charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cold_charging_first.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
