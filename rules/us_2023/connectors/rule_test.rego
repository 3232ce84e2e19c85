package codebooks.us_2023.connectors_test

import data.codebooks.us_2023.connectors

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"no conductor": {"design": "breaks", "facts": {}, "about": "string.south.a", "verdict": "breaks"},
	"alike": {"design": "meets", "facts": {}, "about": "string.south.a", "verdict": "meets"},
	"unlike": {"design": "meets", "facts": {"cable_run.string.south.a.connector": "egret-4"}, "about": "string.south.a", "verdict": "breaks"},
	"unlike, listed to be mated": {"design": "meets", "facts": {"cable_run.string.south.a.connector": "egret-4", "array.south.declared.us_2023.connectors_intermatable": true}, "about": "string.south.a", "verdict": "does_not_apply"},
	"unknown cable_run.string.south.a.connector": {"design": "meets", "facts": {"cable_run.string.south.a.connector": null}, "about": "string.south.a", "verdict": "unproven"},
	"unknown panel.sage-330.connector": {"design": "meets", "facts": {"panel.sage-330.connector": null}, "about": "string.south.a", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "string.south.a", "verdict": "does_not_apply"},
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
	alike := test.verdicts(plain, connectors.check, {}) with input as plain
	["meets"] == [v.verdict | some v in alike; v.about == "string.south.a"]
	unlike := test.verdicts(plain, connectors.check, {"cable_run.string.south.a.connector": "egret-4"}) with input as plain
	["breaks"] == [v.verdict | some v in unlike; v.about == "string.south.a"]
}
