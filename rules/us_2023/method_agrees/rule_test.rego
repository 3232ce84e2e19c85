package codebooks.us_2023.method_agrees_test

import data.codebooks.us_2023.method_agrees

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"free air, nothing around": {"design": "meets", "facts": {"cable_run.string.south.a.method": "free_air", "cable_run.string.south.a.declared.us_2023.raceway": "none"}, "about": "cable_run.string.south.a", "which": "free air", "verdict": "meets"},
	"free air, in metal": {"design": "meets", "facts": {"cable_run.string.south.a.method": "free_air", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "cable_run.string.south.a", "which": "free air", "verdict": "breaks"},
	"free air, in plastic": {"design": "meets", "facts": {"cable_run.string.south.a.method": "free_air", "cable_run.string.south.a.declared.us_2023.raceway": "nonmetallic"}, "about": "cable_run.string.south.a", "which": "free air", "verdict": "breaks"},
	"free air, metal-clad cable": {"design": "meets", "facts": {"cable_run.string.south.a.method": "free_air", "cable_run.string.south.a.declared.us_2023.raceway": "mc_cable"}, "about": "cable_run.string.south.a", "which": "free air", "verdict": "breaks"},
	"free air, unknown": {"design": "meets", "facts": {"cable_run.string.south.a.method": "free_air", "cable_run.string.south.a.declared.us_2023.raceway": null}, "about": "cable_run.string.south.a", "which": "free air", "verdict": "unproven"},
	"conduit, metal": {"design": "meets", "facts": {"cable_run.array.south.method": "conduit", "cable_run.array.south.declared.us_2023.raceway": "metal"}, "about": "cable_run.array.south", "which": "conduit", "verdict": "meets"},
	"conduit, plastic": {"design": "meets", "facts": {"cable_run.array.south.method": "conduit", "cable_run.array.south.declared.us_2023.raceway": "nonmetallic"}, "about": "cable_run.array.south", "which": "conduit", "verdict": "meets"},
	"conduit, nothing": {"design": "meets", "facts": {"cable_run.array.south.method": "conduit", "cable_run.array.south.declared.us_2023.raceway": "none"}, "about": "cable_run.array.south", "which": "conduit", "verdict": "breaks"},
	"conduit, metal-clad cable": {"design": "meets", "facts": {"cable_run.array.south.method": "conduit", "cable_run.array.south.declared.us_2023.raceway": "mc_cable"}, "about": "cable_run.array.south", "which": "conduit", "verdict": "breaks"},
	"in the earth, nothing": {"design": "meets", "facts": {"cable_run.array.south.method": "direct_buried", "cable_run.array.south.declared.us_2023.raceway": "none"}, "about": "cable_run.array.south", "which": "direct buried", "verdict": "meets"},
	"in the earth, metal-clad cable": {"design": "meets", "facts": {"cable_run.array.south.method": "direct_buried", "cable_run.array.south.declared.us_2023.raceway": "mc_cable"}, "about": "cable_run.array.south", "which": "direct buried", "verdict": "meets"},
	"in the earth, plastic": {"design": "meets", "facts": {"cable_run.array.south.method": "direct_buried", "cable_run.array.south.declared.us_2023.raceway": "nonmetallic"}, "about": "cable_run.array.south", "which": "direct buried", "verdict": "breaks"},
	"on a surface, metal-clad cable": {"design": "meets", "facts": {"cable_run.array.south.method": "surface", "cable_run.array.south.declared.us_2023.raceway": "mc_cable"}, "about": "cable_run.array.south", "which": "conduit", "verdict": "does_not_apply"},
	"a raceway below ground": {"design": "meets", "facts": {"cable_run.array.south.method": "buried", "cable_run.array.south.declared.us_2023.raceway": "nonmetallic"}, "about": "cable_run.array.south", "which": "direct buried", "verdict": "does_not_apply"},
	"method unknown": {"design": "meets", "facts": {"cable_run.array.south.method": null, "cable_run.array.south.declared.us_2023.raceway": "metal"}, "about": "cable_run.array.south", "which": "conduit", "verdict": "unproven"},
	"no free air": {"design": "meets", "facts": {"cable_run.array.south.method": "conduit", "cable_run.array.south.declared.us_2023.raceway": "metal"}, "about": "cable_run.array.south", "which": "free air", "verdict": "does_not_apply"},
	"on the bank's side": {"design": "meets", "facts": {}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "cable_run.string.south.a", "which": "free air", "verdict": "does_not_apply"},
	"on a boat, a conduit": {"design": "meets", "facts": {"site.place": "boat", "cable_run.array.south.declared.us_2023.raceway": "none"}, "about": "cable_run.array.south", "which": "conduit", "verdict": "does_not_apply"},
	"on a boat, in the earth": {"design": "meets", "facts": {"site.place": "boat", "cable_run.array.south.method": "direct_buried"}, "about": "cable_run.array.south", "which": "direct buried", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, method_agrees.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# PV runs have an answer for each way of laying, all others one for all.
test_whom_it_asks if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, method_agrees.check, {}) with input as system
	["conduit", "direct buried", "free air"] == sort([object.get(v, "which", null) | some v in verdicts; v.about == "cable_run.array.south"])
	[null] == [object.get(v, "which", null) | some v in verdicts; v.about == "cable_run.charger.main"]
}
