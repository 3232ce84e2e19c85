package codebooks.limits.bank_charge_test

import data.codebooks.limits.bank_charge

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.charge_current_total": "180 A"}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.charge_current_total": "179.982 A"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.charge_current_total": "180.018 A"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.charge_current_total": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown bank.house.charge_current_accepted": {"design": "meets", "facts": {"bank.house.charge_current_accepted": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown charge_source.engine.charge_current": {"design": "meets", "facts": {"charge_source.engine.charge_current": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown battery.peat-100.charge_current_max": {"design": "meets", "facts": {"battery.peat-100.charge_current_max": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown battery.peat-100.bms.charge_cutoff": {"design": "meets", "facts": {"battery.peat-100.bms.charge_cutoff": null}, "about": "bank.house", "verdict": "unproven"},
	"one source unknown, the other alone too much": {"design": "meets", "facts": {"charge_source.engine.charge_current": null, "bank.house.charge_current_accepted": "50 A"}, "about": "bank.house", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_charge.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
