package codebooks.vehicle.source_device_test

import data.codebooks.vehicle.source_device

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.device_at_source": "0.3 m"}, "about": "charge_source.engine", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.device_at_source": "0.2997 m"}, "about": "charge_source.engine", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.device_at_source": "0.3003 m"}, "about": "charge_source.engine", "verdict": "breaks"},
	"by a workshop's own figure": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.device_at_source": "0.3 m", "param.vehicle.source_device_max": "0.25 m"}, "about": "charge_source.engine", "verdict": "breaks"},
	"no device": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.device_at_source": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"limits itself, and no device": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.self_limiting": true, "charge_source.engine.declared.vehicle.device_at_source": null}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"limits itself or not": {"design": "meets", "facts": {"charge_source.engine.declared.vehicle.self_limiting": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "charge_source.engine", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, source_device.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
