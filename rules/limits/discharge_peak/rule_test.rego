package codebooks.limits.discharge_peak_test

import data.codebooks.limits.discharge_peak

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"bank.house.discharge_current_peak": "360 A"}, "about": "bank.house", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"bank.house.discharge_current_peak": "359.964 A"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.discharge_current_peak": "360.036 A"}, "about": "bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"bank.house.discharge_current_peak": null}, "about": "bank.house", "verdict": "unproven"},
	"unknown battery.peat-100.bms.discharge_cutoff": {"design": "meets", "facts": {"battery.peat-100.bms.discharge_cutoff": null}, "about": "bank.house", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, discharge_peak.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
