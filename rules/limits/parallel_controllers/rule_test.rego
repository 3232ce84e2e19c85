package codebooks.limits.parallel_controllers_test

import data.codebooks.limits.parallel_controllers

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"two, exactly as many as allowed": {"design": "meets", "facts": {"controller.reed-70.parallel_max": 2}, "about": "charger.main", "verdict": "meets"},
	"two, one allowed": {"design": "meets", "facts": {"controller.reed-70.parallel_max": 1}, "about": "charger.main", "verdict": "breaks"},
	"alone on its bank": {"design": "meets", "facts": {}, "about": "charger.third", "verdict": "does_not_apply"},
	"unknown controller.reed-70.parallel_max": {"design": "meets", "facts": {"controller.reed-70.parallel_max": null}, "about": "charger.second", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, parallel_controllers.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Unlike controllers on one bank are no set.
test_unlike if {
	system := test.facts("meets")
	unlike := object.union(system, {"chargers": [object.union(c, {"controller": object.union(c.controller, {"id": c.id})}) | some c in system.chargers]})
	verdicts := test.verdicts(unlike, parallel_controllers.check, {}) with input as unlike
	{"does_not_apply"} == {v.verdict | some v in verdicts}
}
