package codebooks.iec.array_device_test

import data.codebooks.iec.array_device

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"no back-feed": {"design": "meets", "facts": {}, "about": "array.south", "verdict": "meets"},
	"PWM": {"design": "meets", "facts": {"controller.reed-70.kind": "pwm"}, "about": "array.south", "verdict": "breaks"},
	"feeds back 0.1 A": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": "0.1 A"}, "about": "array.south", "verdict": "breaks"},
	"back-feed unknown": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": null}, "about": "array.south", "verdict": "unproven"},
	"kind unknown": {"design": "meets", "facts": {"controller.reed-70.kind": null}, "about": "array.south", "verdict": "unproven"},
	"PWM, back-feed unknown": {"design": "meets", "facts": {"controller.reed-70.kind": "pwm", "controller.reed-70.pv_backfeed_max": null}, "about": "array.south", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, array_device.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# With a device of its own nothing is asked of the controller.
test_with_a_device if {
	system := test.facts("meets")
	changed := object.union(system, {"arrays": [object.union(a, {"protections": system.protections}) | some a in system.arrays]})
	verdicts := test.verdicts(changed, array_device.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "array.south"]
}
