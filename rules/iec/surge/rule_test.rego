package codebooks.iec.surge_test

import data.codebooks.iec.surge

# Worked: 2.5 flashes for each square kilometer and year: 115 / 2.5 = 46 m for a dwelling, 80 m on the
# ground, 180 m for other buildings.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly the critical length, fitted": {"design": "meets", "facts": {}, "about": "pv_input.main.1", "verdict": "meets"},
	"exactly the critical length, not fitted": {"design": "meets", "facts": {"grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "breaks"},
	"a step shorter, not fitted": {"design": "meets", "facts": {"cable_run.array.south.length": "11.99 m", "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "meets"},
	"silent, long": {"design": "meets", "facts": {"grounding.surge_protection": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"silent, short": {"design": "meets", "facts": {"grounding.surge_protection": null, "cable_run.array.south.length": "11.99 m"}, "about": "pv_input.main.1", "verdict": "meets"},
	"fitted, critical length unknown": {"design": "meets", "facts": {"site.declared.iec.critical_length": null}, "about": "pv_input.main.1", "verdict": "meets"},
	"not fitted, critical length unknown": {"design": "meets", "facts": {"site.declared.iec.critical_length": null, "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "unproven"},
	"2.5 flashes, dwelling: 46 m, not fitted": {"design": "meets", "facts": {"site.declared.iec.critical_length": "46 m", "cable_run.array.south.length": "40 m", "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "breaks"},
	"2.5 flashes, other building: 180 m, not fitted": {"design": "meets", "facts": {"site.declared.iec.critical_length": "180 m", "cable_run.array.south.length": "40 m", "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "meets"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat", "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"not fitted, length unknown": {"design": "meets", "facts": {"cable_run.array.south.length": null, "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, surge.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Where no cable is described there is no length.
test_no_cable if {
	system := test.facts("meets")
	changed := object.union(system, {"strings": [object.union(s, {"cable_runs": []}) | some s in system.strings], "arrays": [object.union(a, {"cable_runs": []}) | some a in system.arrays]})
	verdicts := test.verdicts(changed, surge.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "pv_input.main.1"]
}

# An array whose strings have no cable of their own counts by its cable.
test_array_cable_alone if {
	system := test.facts("meets")
	changed := object.union(system, {"strings": [object.union(s, {"cable_runs": []}) | some s in system.strings]})
	verdicts := test.verdicts(changed, surge.check, {"grounding.surge_protection": false}) with input as changed
	["meets"] == [v.verdict | some v in verdicts; v.about == "pv_input.main.1"]
}

# An array on another input, with its strings, adds nothing to this one's length.
test_another_input if {
	system := test.facts("meets")
	other := [object.union(a, {"id": "array.other", "pv_input": {"id": "pv_input.other.1"}}) | some a in system.arrays]
	strings := [object.union(s, {"id": "string.other.b", "array": {"id": "array.other"}}) | some s in system.strings]
	changed := object.union(system, {"strings": array.concat(system.strings, strings), "arrays": array.concat(system.arrays, other)})
	verdicts := test.verdicts(changed, surge.check, {"grounding.surge_protection": false, "cable_run.array.south.length": "11.99 m"}) with input as changed
	["meets"] == [v.verdict | some v in verdicts; v.about == "pv_input.main.1"]
}

# A long string of another array is not the longest of this one.
test_string_of_another_array if {
	system := test.facts("meets")
	lights := [r | some r in system.cable_runs; r.id == "cable_run.load.lights"]
	strings := [object.union(s, {"id": "string.other.b", "array": {"id": "array.other"}, "cable_runs": lights}) | some s in system.strings]
	changed := object.union(system, {"strings": array.concat(system.strings, strings)})
	verdicts := test.verdicts(changed, surge.check, {"grounding.surge_protection": false, "cable_run.array.south.length": "11.99 m", "cable_run.load.lights.length": "100 m"}) with input as changed
	["meets"] == [v.verdict | some v in verdicts; v.about == "pv_input.main.1"]
}
