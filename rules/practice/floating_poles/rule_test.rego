package codebooks.practice.floating_poles_test

import data.codebooks.practice.floating_poles

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a breaker of two poles": {"design": "meets", "facts": {}, "about": "grounding", "which": "protection.charger.main", "verdict": "meets"},
	"a breaker of one pole": {"design": "meets", "facts": {"protection.charger.main.poles": 1}, "about": "grounding", "which": "protection.charger.main", "verdict": "breaks"},
	"poles unknown": {"design": "meets", "facts": {"protection.charger.main.poles": null}, "about": "grounding", "which": "protection.charger.main", "verdict": "unproven"},
	"a switch of two poles": {"design": "meets", "facts": {}, "about": "grounding", "which": "disconnect.array.south", "verdict": "meets"},
	"a switch of one pole": {"design": "meets", "facts": {"disconnect.array.south.poles": 1}, "about": "grounding", "which": "disconnect.array.south", "verdict": "breaks"},
	"poles of a switch unknown": {"design": "meets", "facts": {"disconnect.array.south.poles": null}, "about": "grounding", "which": "disconnect.array.south", "verdict": "unproven"},
	"grounded": {"design": "meets", "facts": {"grounding.dc": "negative", "protection.charger.main.poles": 1}, "about": "grounding", "which": "protection.charger.main", "verdict": "does_not_apply"},
	"grounded, a switch": {"design": "meets", "facts": {"grounding.dc": "positive", "disconnect.array.south.poles": 1}, "about": "grounding", "which": "disconnect.array.south", "verdict": "does_not_apply"},
	"grounded or not unknown": {"design": "meets", "facts": {"grounding.dc": null}, "about": "grounding", "which": "protection.charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, floating_poles.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Among panels and on the AC side no device is asked for two poles.
test_whom_it_asks if {
	system := test.facts("meets")
	asked := {v.which | some v in test.verdicts(system, floating_poles.check, {})} with input as system
	not "protection.string.south.a" in asked
	not "protection.array.south" in asked
	not "protection.load.pump" in asked
	not "disconnect.load.pump" in asked
	"protection.load.lights" in asked
	"disconnect.bank.house" in asked
}

# Without any device there is one answer, about all.
test_nothing if {
	system := test.facts("meets")
	kept := {"protections": ["protection.string.south.a", "protection.load.pump"], "disconnects": ["disconnect.load.pump"]}
	bare := object.union(system, {
		"protections": [p | some p in system.protections; p.id in kept.protections],
		"disconnects": [d | some d in system.disconnects; d.id in kept.disconnects],
	})
	verdicts := test.verdicts(bare, floating_poles.check, {}) with input as bare
	["does_not_apply"] == [v.verdict | some v in verdicts]
}

# One that is there leaves no answer for all.
test_not_for_all if {
	system := test.facts("meets")
	every kind in ["protections", "disconnects"] {
		bare := object.union(system, {kind: []})
		verdicts := test.verdicts(bare, floating_poles.check, {}) with input as bare
		count([v | some v in verdicts; v.verdict == "does_not_apply"]) == 0
		count(verdicts) > 0
	}
}
