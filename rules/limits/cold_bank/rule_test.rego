package codebooks.limits.cold_bank_test

import data.codebooks.limits.cold_bank

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"cold, with heater": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"exactly warm enough, no heater": {"design": "meets", "facts": {"bank.house.coldest": "0 degC", "battery.peat-100.heater": false}, "about": "bank.house", "verdict": "meets"},
	"a step too cold, no heater": {"design": "meets", "facts": {"bank.house.coldest": "-0.1 degC", "battery.peat-100.heater": false}, "about": "bank.house", "verdict": "breaks"},
	"unknown battery.peat-100.heater": {"design": "meets", "facts": {"battery.peat-100.heater": null}, "about": "bank.house", "verdict": "unproven"},
	"silent on the place, no heater": {"design": "meets", "facts": {"bank.house.coldest": null, "battery.peat-100.heater": false}, "about": "bank.house", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cold_bank.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What the verdict shows beside its yes or no.
test_also if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, cold_bank.check, {"bank.house.coldest": "-7 degC", "bank.house.hottest": "30 degC", "battery.peat-100.charge_above": "1 degC", "battery.peat-100.charge_below": "45 degC"}) with input as system
	[[-7, 1]] == [v.also | some v in verdicts; v.about == "bank.house"]
}
