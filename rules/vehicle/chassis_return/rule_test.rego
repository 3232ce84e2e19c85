package codebooks.vehicle.chassis_return_test

import data.codebooks.vehicle.chassis_return

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"two conductors": {"design": "meets", "facts": {}, "about": "cable_run.load.lights", "verdict": "meets"},
	"chassis": {"design": "meets", "facts": {"cable_run.load.lights.declared.vehicle.chassis_return": true}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"cable_run.load.lights.declared.vehicle.chassis_return": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"on the AC side": {"design": "meets", "facts": {}, "about": "cable_run.load.socket", "verdict": "does_not_apply"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, chassis_return.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
