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
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cold_charging_source.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
