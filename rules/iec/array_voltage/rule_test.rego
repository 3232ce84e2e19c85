package codebooks.iec.array_voltage_test

import data.codebooks.iec.array_voltage

# Worked: 49.5 V, -0.27 %/K, -10 degC gives 54.1778 V a panel (the maker's method, recomputed), 162.5333 V for three.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"controller: exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "150 V"}, "about": "pv_input.main.1", "which": "controller", "verdict": "meets"},
	"controller: a step inside": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "149.85 V"}, "about": "pv_input.main.1", "which": "controller", "verdict": "meets"},
	"controller: a step beyond": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "150.15 V"}, "about": "pv_input.main.1", "which": "controller", "verdict": "breaks"},
	"controller: unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "pv_input.main.1", "which": "controller", "verdict": "unproven"},
	"the array's breaker: exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "250 V"}, "about": "pv_input.main.1", "which": "protection.array.south", "verdict": "meets"},
	"the array's breaker: a step inside": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "249.75 V"}, "about": "pv_input.main.1", "which": "protection.array.south", "verdict": "meets"},
	"the array's breaker: a step beyond": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "250.25 V"}, "about": "pv_input.main.1", "which": "protection.array.south", "verdict": "breaks"},
	"the array's breaker: unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "pv_input.main.1", "which": "protection.array.south", "verdict": "unproven"},
	"disconnect of 80 V": {"design": "meets", "facts": {"disconnect.array.south.voltage": "80 V"}, "about": "pv_input.main.1", "which": "disconnect.array.south", "verdict": "breaks"},
	"cable of 80 V": {"design": "meets", "facts": {"cable_run.string.south.a.voltage": "80 V"}, "about": "pv_input.main.1", "which": "cable_run.string.south.a", "verdict": "breaks"},
	"string fuse of unknown voltage": {"design": "meets", "facts": {"protection.string.south.a.voltage": null}, "about": "pv_input.main.1", "which": "protection.string.south.a", "verdict": "unproven"},
	"panels for 80 V": {"design": "meets", "facts": {"panel.fen-200.max_system_voltage": "80 V"}, "about": "pv_input.main.1", "which": "panels of string.south.a", "verdict": "breaks"},
	"no coefficient": {"design": "meets", "facts": {"panel.fen-200.temp_voc": null}, "about": "pv_input.main.1", "which": "controller", "verdict": "unproven"},
	"49.5 V, -0.27 %/K, -10 degC: three are 162.53 V": {"design": "meets", "facts": {"panel.fen-200.voc": "49.5 V", "panel.fen-200.temp_voc": "-0.27 %/K", "site.coldest": "-10 degC", "controller.reed-70.pv_voltage_max": "162.5334 V"}, "about": "pv_input.main.1", "which": "controller", "verdict": "meets"},
	"the same on a controller for 162.53 V": {"design": "meets", "facts": {"panel.fen-200.voc": "49.5 V", "panel.fen-200.temp_voc": "-0.27 %/K", "site.coldest": "-10 degC", "controller.reed-70.pv_voltage_max": "162.53 V"}, "about": "pv_input.main.1", "which": "controller", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, array_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What stands on another input is none of this one's.
test_another_input if {
	system := test.facts("meets")
	other := {"id": "pv_input.other.1"}
	charger := [r | some r in system.cable_runs; r.id == "cable_run.charger.main"]
	lights := [r | some r in system.cable_runs; r.id == "cable_run.load.lights"]
	strings := [object.union(s, {"id": "string.other.b", "pv_input": other, "cable_runs": charger}) | some s in system.strings]
	arrays := [object.union(a, {"id": "array.other", "pv_input": other, "cable_runs": lights}) | some a in system.arrays]
	both := object.union(system, {"strings": array.concat(system.strings, strings), "arrays": array.concat(system.arrays, arrays)})
	verdicts := test.verdicts(both, array_voltage.check, {}) with input as both
	{v.which | some v in verdicts; v.about == "pv_input.main.1"} == {
		"controller", "panels of string.south.a", "cable_run.string.south.a", "protection.string.south.a",
		"cable_run.array.south", "protection.array.south", "disconnect.array.south",
	}
}
