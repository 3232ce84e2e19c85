package codebooks.limits.cold_charging_test

import data.codebooks.limits.cold_charging

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"the battery stops exactly at its limit": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": "0 degC", "charger.main.settings.cold_charge_cutoff": "-5 degC"}, "about": "charger.main", "verdict": "meets"},
	"the battery stops a step too late, the controller too": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": "-0.1 degC", "charger.main.settings.cold_charge_cutoff": "-0.1 degC"}, "about": "charger.main", "verdict": "breaks"},
	"the controller stops exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": "-5 degC", "charger.main.settings.cold_charge_cutoff": "0 degC"}, "about": "charger.main", "verdict": "meets"},
	"the controller stops, but has no sensor at the bank": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": "-5 degC", "charger.main.settings.bank_temperature_sensor": false}, "about": "charger.main", "verdict": "breaks"},
	"the battery's sheet is silent, the controller has no cut-off": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": null, "charger.main.settings.cold_charge_cutoff": null}, "about": "charger.main", "verdict": "unproven"},
	"the battery's sheet is silent, the controller stops": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": null}, "about": "charger.main", "verdict": "meets"},
	"unknown bank.house.coldest": {"design": "meets", "facts": {"bank.house.coldest": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown battery.peat-100.charge_above": {"design": "meets", "facts": {"battery.peat-100.charge_above": null}, "about": "charger.main", "verdict": "unproven"},
	"the bank stays exactly at the limit": {"design": "meets", "facts": {"bank.house.coldest": "0 degC"}, "about": "charger.main", "verdict": "does_not_apply"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded"}, "about": "charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cold_charging.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What the verdict shows beside its yes or no.
test_also if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, cold_charging.check, {"bank.house.coldest": "-7 degC", "charger.main.hottest": "31 degC", "charger.main.settings.cold_charge_cutoff": "4 degC", "battery.peat-100.bms.cold_charge_cutoff": "2 degC", "battery.peat-100.charge_above": "1 degC", "battery.peat-100.charge_below": "45 degC"}) with input as system
	[[4, 2, 1, -7]] == [v.also | some v in verdicts; v.about == "charger.main"]
}
