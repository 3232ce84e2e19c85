package codebooks.practice.floating_poles_test

import data.codebooks.practice.floating_poles

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a breaker of two poles": {"design": "meets", "facts": {}, "about": "grounding", "which": "devices", "verdict": "meets"},
	"a breaker of one pole": {"design": "meets", "facts": {"protection.charger.main.poles": 1}, "about": "grounding", "which": "devices", "verdict": "breaks"},
	"poles unknown": {"design": "meets", "facts": {"protection.charger.main.poles": null}, "about": "grounding", "which": "devices", "verdict": "unproven"},
	"a switch of two poles": {"design": "meets", "facts": {}, "about": "grounding", "which": "switches", "verdict": "meets"},
	"a switch of one pole": {"design": "meets", "facts": {"disconnect.array.south.poles": 1}, "about": "grounding", "which": "switches", "verdict": "breaks"},
	"poles of a switch unknown": {"design": "meets", "facts": {"disconnect.array.south.poles": null}, "about": "grounding", "which": "switches", "verdict": "unproven"},
	"grounded": {"design": "meets", "facts": {"grounding.dc": "negative", "protection.charger.main.poles": 1}, "about": "grounding", "which": "devices", "verdict": "does_not_apply"},
	"grounded, a switch": {"design": "meets", "facts": {"grounding.dc": "positive", "disconnect.array.south.poles": 1}, "about": "grounding", "which": "switches", "verdict": "does_not_apply"},
	"grounded or not unknown": {"design": "meets", "facts": {"grounding.dc": null}, "about": "grounding", "which": "devices", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, floating_poles.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Among panels and on the AC side no device is asked for two poles, and a bank's fuse is.
test_whom_it_asks if {
	system := test.facts("meets")
	every id, owed in {
		"protection.string.south.a": [], "protection.array.south": [], "protection.load.pump": [], "disconnect.load.pump": [],
		"protection.load.lights": ["devices"], "protection.bank.house.each": ["devices"], "disconnect.bank.house": ["switches"],
	} {
		verdicts := test.verdicts(system, floating_poles.check, {concat(".", [id, "poles"]): 1}) with input as system
		owed == [v.which | some v in verdicts; v.verdict == "breaks"]
	}
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
		count(verdicts) == 1
	}
}
