package codebooks.marine.source_device_test

import data.codebooks.marine.source_device

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"charge_source.engine.declared.marine.device_at_source": "1.8 m"}, "about": "charge_source.engine", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"charge_source.engine.declared.marine.device_at_source": "1.7982 m"}, "about": "charge_source.engine", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"charge_source.engine.declared.marine.device_at_source": "1.8018 m"}, "about": "charge_source.engine", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"charge_source.engine.declared.marine.device_at_source": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"self-limiting": {"design": "meets", "facts": {"charge_source.engine.declared.marine.self_limiting": true}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"self-limiting or not unknown": {"design": "meets", "facts": {"charge_source.engine.declared.marine.self_limiting": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "charge_source.engine", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, source_device.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
