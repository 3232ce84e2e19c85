package codebooks.limits.common_pole_test

import data.codebooks.limits.common_pole

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"both negative": {"design": "meets", "facts": {}, "about": "charger.main", "verdict": "meets"},
	"common positive, grounded negative": {"design": "meets", "facts": {"controller.reed-70.common": "positive"}, "about": "charger.main", "verdict": "breaks"},
	"unknown controller.reed-70.common": {"design": "meets", "facts": {"controller.reed-70.common": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown controller.reed-70.isolated": {"design": "meets", "facts": {"controller.reed-70.isolated": null}, "about": "charger.main", "verdict": "unproven"},
	"unknown grounding.dc": {"design": "meets", "facts": {"grounding.dc": null}, "about": "charger.main", "verdict": "unproven"},
	"isolated": {"design": "meets", "facts": {"controller.reed-70.isolated": true}, "about": "charger.main", "verdict": "does_not_apply"},
	"floating": {"design": "meets", "facts": {"grounding.dc": "floating"}, "about": "charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, common_pole.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
