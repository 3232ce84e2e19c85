package codebooks.limits.load_terminals_test

import data.codebooks.limits.load_terminals

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charger.main.load_terminals_current": "20 A"}, "about": "charger.main", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"charger.main.load_terminals_current": "19.998 A"}, "about": "charger.main", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"charger.main.load_terminals_current": "20.002 A"}, "about": "charger.main", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charger.main.load_terminals_current": null}, "about": "charger.main", "verdict": "unproven"},
	"nothing on its terminals": {"design": "meets", "facts": {}, "about": "charger.second", "verdict": "does_not_apply"},
	"unknown controller.reed-70.load_current_max": {"design": "meets", "facts": {"controller.reed-70.load_current_max": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown load.porch.power": {"design": "meets", "facts": {"load.porch.power": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, load_terminals.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
