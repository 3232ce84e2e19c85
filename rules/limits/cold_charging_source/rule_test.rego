package codebooks.limits.cold_charging_source_test

import data.codebooks.limits.cold_charging_source

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"the battery stops exactly at its limit": {"design": "meets", "facts": {"charge_source.engine.cold_charge_cutoff": null}, "about": "charge_source.engine", "verdict": "meets"},
	"the source stops exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": null, "charge_source.engine.cold_charge_cutoff": "0 degC"}, "about": "charge_source.engine", "verdict": "meets"},
	"both a step too late": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": "-0.1 degC", "charge_source.engine.cold_charge_cutoff": "-0.1 degC"}, "about": "charge_source.engine", "verdict": "breaks"},
	"both silent": {"design": "meets", "facts": {"battery.peat-100.bms.cold_charge_cutoff": null, "charge_source.engine.cold_charge_cutoff": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"unknown bank.house.coldest": {"design": "meets", "facts": {"bank.house.coldest": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"the bank stays exactly at the limit": {"design": "meets", "facts": {"bank.house.coldest": "0 degC"}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded"}, "about": "charge_source.engine", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cold_charging_source.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What the verdict shows beside its yes or no.
test_also if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, cold_charging_source.check, {"bank.house.coldest": "-7 degC", "charge_source.engine.cold_charge_cutoff": "4 degC", "battery.peat-100.bms.cold_charge_cutoff": "2 degC", "battery.peat-100.charge_above": "1 degC", "battery.peat-100.charge_below": "45 degC"}) with input as system
	[[4, 2, 1, -7]] == [v.also | some v in verdicts; v.about == "charge_source.engine"]
}
