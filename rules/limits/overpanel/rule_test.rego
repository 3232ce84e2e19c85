package codebooks.limits.overpanel_test

import data.codebooks.limits.overpanel

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charger.main.overpanel": "130 %"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.overpanel": "129.987 %"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charger.main.overpanel": "130.013 %"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.overpanel": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown charger.main.overpanel_limit": {"design": "meets", "facts": {"charger.main.overpanel_limit": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown controller.reed-70.charge_current_max": {"design": "meets", "facts": {"controller.reed-70.charge_current_max": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, overpanel.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
