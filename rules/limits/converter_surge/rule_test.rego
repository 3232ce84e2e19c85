package codebooks.limits.converter_surge_test

import data.codebooks.limits.converter_surge

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"alone, exactly at the limit": {"design": "meets", "facts": {"load.radio.surge_current": "20 A", "supply.twelve.load_current": "4 A", "load.radio.current": "4 A"}, "about": "load.radio", "verdict": "meets"},
	"alone, a step above": {"design": "meets", "facts": {"load.radio.surge_current": "20.1 A", "supply.twelve.load_current": "4 A", "load.radio.current": "4 A"}, "about": "load.radio", "verdict": "breaks"},
	"with others, exactly at the limit": {"design": "meets", "facts": {"load.radio.surge_current": "10 A", "supply.twelve.load_current": "14 A", "load.radio.current": "4 A"}, "about": "load.radio", "verdict": "meets"},
	"with others, a step above": {"design": "meets", "facts": {"load.radio.surge_current": "10.1 A", "supply.twelve.load_current": "14 A", "load.radio.current": "4 A"}, "about": "load.radio", "verdict": "breaks"},
	"what it takes at its lowest voltage goes off the sum": {"design": "meets", "facts": {"load.radio.surge_current": "10 A", "supply.twelve.load_current": "14 A", "load.radio.current": "4 A", "load.radio.current_operating": "0.5 A"}, "about": "load.radio", "verdict": "meets"},
	"surge unknown": {"design": "meets", "facts": {"load.radio.surge": null}, "about": "load.radio", "verdict": "unproven"},
	"converter unknown": {"design": "meets", "facts": {"converter.rush-20.current": null}, "about": "load.radio", "verdict": "unproven"},
	"on the bank": {"design": "meets", "facts": {}, "about": "load.lights", "verdict": "does_not_apply"},
	"on an inverter": {"design": "meets", "facts": {}, "about": "load.pump", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, converter_surge.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# One that hangs on a converter has one answer.
test_one_answer if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, converter_surge.check, {}) with input as system
	["meets"] == [v.verdict | some v in verdicts; v.about == "load.radio"]
}
