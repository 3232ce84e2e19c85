package codebooks.iec.array_switch_test

import data.codebooks.iec.array_switch

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"disconnect.array.south.rating": "39 A"}, "about": "array.south", "which": "current", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"disconnect.array.south.rating": "39.039 A"}, "about": "array.south", "which": "current", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"disconnect.array.south.rating": "38.961 A"}, "about": "array.south", "which": "current", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"disconnect.array.south.rating": null}, "about": "array.south", "which": "current", "verdict": "unproven"},
	"voltage: exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "250 V"}, "about": "array.south", "which": "voltage", "verdict": "meets"},
	"voltage: a step inside": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "249.75 V"}, "about": "array.south", "which": "voltage", "verdict": "meets"},
	"voltage: a step beyond": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "250.25 V"}, "about": "array.south", "which": "voltage", "verdict": "breaks"},
	"voltage: unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "array.south", "which": "voltage", "verdict": "unproven"},
	"not for direct current": {"design": "meets", "facts": {"disconnect.array.south.dc_rated": false}, "about": "array.south", "which": "direct current", "verdict": "breaks"},
	"direct current unknown": {"design": "meets", "facts": {"disconnect.array.south.dc_rated": null}, "about": "array.south", "which": "direct current", "verdict": "unproven"},
	"not under load": {"design": "meets", "facts": {"disconnect.array.south.load_break": false}, "about": "array.south", "which": "under load", "verdict": "breaks"},
	"one pole, floating": {"design": "meets", "facts": {"disconnect.array.south.poles": 1, "grounding.dc": "floating"}, "about": "array.south", "which": "poles", "verdict": "breaks"},
	"one pole, the other earthed": {"design": "meets", "facts": {"disconnect.array.south.poles": 1}, "about": "array.south", "which": "poles", "verdict": "meets"},
	"one pole, which is earthed unknown": {"design": "meets", "facts": {"disconnect.array.south.poles": 1, "grounding.dc": null}, "about": "array.south", "which": "poles", "verdict": "unproven"},
	"nothing": {"design": "breaks", "facts": {}, "about": "array.south", "verdict": "breaks"},
	"two poles, floating": {"design": "meets", "facts": {"grounding.dc": "floating"}, "about": "array.south", "which": "poles", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, array_switch.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Where a switch is, the breaker beside it need not be one.
test_verdicts_on_south if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, array_switch.check, {}) with input as system
	{"direct current", "under load", "voltage", "current", "poles"} == {object.get(v, "which", "") | some v in verdicts; v.about == "array.south"}
}

# Each case: the facts put in place of its own, and the verdict owed where the breaker is the only switch.
breaker_cases := {
	"a breaker": {"facts": {}, "which": "breaker", "verdict": "meets"},
	"a fuse": {"facts": {"protection.array.south.kind": "fuse"}, "which": "breaker", "verdict": "breaks"},
	"two poles, floating": {"facts": {"grounding.dc": "floating"}, "which": "poles", "verdict": "meets"},
	"one pole, floating": {"facts": {"grounding.dc": "floating", "protection.array.south.poles": 1}, "which": "poles", "verdict": "breaks"},
	"one pole, the other earthed": {"facts": {"protection.array.south.poles": 1}, "which": "poles", "verdict": "meets"},
	"one pole, which is earthed unknown": {"facts": {"grounding.dc": null, "protection.array.south.poles": 1}, "which": "poles", "verdict": "unproven"},
	"poles unknown": {"facts": {"protection.array.south.poles": null}, "which": "poles", "verdict": "unproven"},
}

test_breaker_cases[name] if {
	some name, c in breaker_cases
	system := test.facts("meets")
	changed := object.union(system, {"arrays": [object.union(a, {"disconnects": []}) | some a in system.arrays]})
	verdicts := test.verdicts(changed, array_switch.check, c.facts) with input as changed
	[c.verdict] == [v.verdict | some v in verdicts; v.about == "array.south"; v.which == c.which]
}
