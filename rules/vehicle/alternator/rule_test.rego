package codebooks.vehicle.alternator_test

import data.codebooks.vehicle.alternator

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"protected": {"design": "meets", "facts": {}, "about": "charge_source.engine", "verdict": "meets"},
	"not protected": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.protected_from_loss": false}, "about": "charge_source.engine", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.protected_from_loss": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "flooded", "charge_source.engine.declared.vehicle.protected_from_loss": false}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"chemistry unknown": {"design": "meets", "facts": {"battery.peat-100.chemistry": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"limits itself": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.self_limiting": true, "charge_source.engine.declared.vehicle.protected_from_loss": false}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"limits itself or not": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.self_limiting": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "charge_source.engine", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, alternator.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
