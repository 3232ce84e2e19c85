package codebooks.limits.load_voltage_min_test

import data.codebooks.limits.load_voltage_min

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"load.lights.source_voltage_min": "21 V"}, "about": "load.lights", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"load.lights.source_voltage_min": "21.0021 V"}, "about": "load.lights", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"load.lights.source_voltage_min": "20.9979 V"}, "about": "load.lights", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"load.lights.source_voltage_min": null}, "about": "load.lights", "verdict": "unproven"},
	"behind a converter: exactly at the limit": {"design": "meets", "facts": {"load.radio.source_voltage_min": "11 V"}, "about": "load.radio", "verdict": "meets"},
	"behind a converter: a step above": {"design": "meets", "facts": {"load.radio.source_voltage_min": "11.0011 V"}, "about": "load.radio", "verdict": "meets"},
	"behind a converter: a step below": {"design": "meets", "facts": {"load.radio.source_voltage_min": "10.9989 V"}, "about": "load.radio", "verdict": "breaks"},
	"behind a converter: unknown": {"design": "meets", "facts": {"load.radio.source_voltage_min": null}, "about": "load.radio", "verdict": "unproven"},
	"unknown load.lights.voltage_min": {"design": "meets", "facts": {"load.lights.voltage_min": null}, "about": "load.lights", "verdict": "unproven"},
	"on an inverter": {"design": "meets", "facts": {}, "about": "load.pump", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, load_voltage_min.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
