package codebooks.limits.connectors_test

import data.codebooks.limits.connectors

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"one make": {"design": "meets", "facts": {"panel.fen-200.connector": "heron-4", "cable_run.string.south.a.connector": "heron-4"}, "about": "string.south.a", "verdict": "meets"},
	"two makes": {"design": "meets", "facts": {"cable_run.string.south.a.connector": "egret-4"}, "about": "string.south.a", "verdict": "breaks"},
	"no conductor described": {"design": "breaks", "facts": {}, "about": "string.west.a", "verdict": "breaks"},
	"unknown cable_run.string.south.a.connector": {"design": "meets", "facts": {"cable_run.string.south.a.connector": null}, "about": "string.south.a", "verdict": "unproven"},
	"unknown panel.fen-200.connector": {"design": "meets", "facts": {"panel.fen-200.connector": null}, "about": "string.south.a", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, connectors.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# A string without conductors of its own is plugged to its array's.
test_array_conductor if {
	system := test.facts("meets")
	plain := object.union(system, {"strings": [object.union(s, {"cable_runs": [], "array": object.union(s.array, {"cable_runs": s.cable_runs})}) | some s in system.strings]})
	verdicts := test.verdicts(plain, connectors.check, {}) with input as plain
	["meets"] == [v.verdict | some v in verdicts; v.about == "string.south.a"]
}

# Its own come first.
test_own_conductor if {
	system := test.facts("meets")
	both := object.union(system, {"strings": [object.union(s, {"array": object.union(s.array, {"cable_runs": array.concat(s.cable_runs, s.cable_runs)})}) | some s in system.strings]})
	verdicts := test.verdicts(both, connectors.check, {}) with input as both
	["meets"] == [v.verdict | some v in verdicts; v.about == "string.south.a"]
}
