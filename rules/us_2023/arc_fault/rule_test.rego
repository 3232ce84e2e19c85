package codebooks.us_2023.arc_fault_test

import data.codebooks.us_2023.arc_fault

# 690.11 (public transcription): 79.9 V no, 80.0 V yes. Check value A2: two panels of 38.9 V at -20
# degC are 91.8 V by table.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"80.0 V without": {"design": "meets", "facts": {"string.south.a.voc_cold": "80 V", "array.south.declared.us_2023.arc_fault": false}, "about": "array.south", "verdict": "breaks"},
	"79.9 V without": {"design": "meets", "facts": {"string.south.a.voc_cold": "79.9 V", "array.south.declared.us_2023.arc_fault": false}, "about": "array.south", "verdict": "does_not_apply"},
	"two panels of 38.9 V at -20 degC by table: 91.8 V": {"design": "meets", "facts": {"string.south.a.temp_voc_given": false, "string.south.a.voc_stc": "77.8 V", "array.south.declared.us_2023.arc_fault": false}, "about": "array.south", "verdict": "breaks"},
	"on the ground, all in metal, and into the building": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": false, "array.south.mounting": "open_rack", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "array.south", "verdict": "breaks"},
	"on the ground, all in metal, whether into a building unknown": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": null, "array.south.mounting": "open_rack", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "array.south", "verdict": "unproven"},
	"on the ground, a string into the building": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "cable_run.string.south.a.indoors": true, "array.south.mounting": "open_rack", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "array.south", "verdict": "breaks"},
	"beside a vehicle, all in metal, and into it": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": false, "site.place": "vehicle", "array.south.mounting": "open_rack", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "array.south", "verdict": "meets"},
	"on the ground, all in metal": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "array.south.mounting": "open_rack", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "array.south", "verdict": "meets"},
	"on the ground, a string in the open": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "array.south.mounting": "open_rack"}, "about": "array.south", "verdict": "breaks"},
	"on the ground, below ground": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "array.south.mounting": "open_rack", "cable_run.string.south.a.method": "direct_buried"}, "about": "array.south", "verdict": "meets"},
	"on a structure for PV alone, all in metal": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "site.declared.us_2023.structure": "pv_only", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "array.south", "verdict": "meets"},
	"on a structure for PV alone, a string in the open": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "site.declared.us_2023.structure": "pv_only"}, "about": "array.south", "verdict": "breaks"},
	"on a roof, all in metal, and not into it": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "cable_run.array.south.indoors": false, "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "array.south", "verdict": "breaks"},
	"on a roof whatever the design says": {"design": "meets", "facts": {"cable_run.array.south.indoors": false, "array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": false, "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "array.south", "verdict": "breaks"},
	"unknown array.south.declared.us_2023.arc_fault": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": null}, "about": "array.south", "verdict": "unproven"},
	"unknown string.south.a.voc_cold": {"design": "meets", "facts": {"string.south.a.voc_cold": null}, "about": "array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "array.south", "verdict": "does_not_apply"},
	"on a building as the design says, though on a rack": {"design": "meets", "facts": {"cable_run.array.south.indoors": false, "array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": true, "array.south.mounting": "open_rack", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "array.south", "verdict": "breaks"},
	"flush on what is no building, all in metal": {"design": "meets", "facts": {"array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "array.south.mounting": "roof_flush", "cable_run.string.south.a.declared.us_2023.raceway": "metal", "site.place": "ground"}, "about": "array.south", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, arc_fault.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

on_the_ground := {"array.south.declared.us_2023.arc_fault": false, "array.south.declared.us_2023.on_building": false, "cable_run.array.south.indoors": false, "array.south.mounting": "open_rack"}

# Where no conductor is described, none is known to run in metal.
test_no_conductor if {
	system := test.facts("meets")
	bare := object.union(system, {
		"arrays": [object.union(a, {"cable_runs": []}) | some a in system.arrays],
		"strings": [object.union(s, {"cable_runs": []}) | some s in system.strings],
	})
	verdicts := test.verdicts(bare, arc_fault.check, on_the_ground) with input as bare
	["breaks"] == [v.verdict | some v in verdicts; v.about == "array.south"]
}

# A string of another array, in the open, takes nothing from this one.
test_string_of_another_array if {
	system := test.facts("meets")
	apart := object.union(system, {"strings": [object.union(s, {"array": object.union(s.array, {"id": "array.east"})}) | some s in system.strings]})
	verdicts := test.verdicts(apart, arc_fault.check, on_the_ground) with input as apart
	["meets"] == [v.verdict | some v in verdicts; v.about == "array.south"]
}

# A string of 500 V on another input does not raise this one's voltage.
test_string_of_another_input if {
	system := test.facts("meets")
	other := [object.union(s, {"pv_input": object.union(s.pv_input, {"id": "pv_input.other.1"}), "voc_cold": fact.number(500, "V")}) | some s in system.strings]
	both := object.union(system, {"strings": array.concat(system.strings, other)})
	verdicts := test.verdicts(both, arc_fault.check, {"string.south.a.voc_cold": "79.9 V"}) with input as both
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "array.south"]
}
