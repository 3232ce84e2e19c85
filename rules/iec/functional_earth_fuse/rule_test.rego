package codebooks.iec.functional_earth_fuse_test

import data.codebooks.iec.functional_earth_fuse

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"1.8 kW: exactly at the limit": {"design": "meets", "facts": {"grounding.declared.iec.functional_earth_fuse": "1 A"}, "about": "grounding", "verdict": "meets"},
	"1.8 kW: a step inside": {"design": "meets", "facts": {"grounding.declared.iec.functional_earth_fuse": "0.999 A"}, "about": "grounding", "verdict": "meets"},
	"1.8 kW: a step beyond": {"design": "meets", "facts": {"grounding.declared.iec.functional_earth_fuse": "1.001 A"}, "about": "grounding", "verdict": "breaks"},
	"1.8 kW: unknown": {"design": "meets", "facts": {"grounding.declared.iec.functional_earth_fuse": null}, "about": "grounding", "verdict": "unproven"},
	"25 kW: 1 A": {"design": "meets", "facts": {"pv_input.main.1.pmax_stc": "25 kW"}, "about": "grounding", "verdict": "meets"},
	"25 kW: 2 A": {"design": "meets", "facts": {"pv_input.main.1.pmax_stc": "25 kW", "grounding.declared.iec.functional_earth_fuse": "2 A"}, "about": "grounding", "verdict": "breaks"},
	"25.1 kW: 2 A": {"design": "meets", "facts": {"pv_input.main.1.pmax_stc": "25.1 kW", "grounding.declared.iec.functional_earth_fuse": "2 A"}, "about": "grounding", "verdict": "meets"},
	"50.1 kW: 3 A": {"design": "meets", "facts": {"pv_input.main.1.pmax_stc": "50.1 kW", "grounding.declared.iec.functional_earth_fuse": "3 A"}, "about": "grounding", "verdict": "meets"},
	"50 kW: 3 A": {"design": "meets", "facts": {"pv_input.main.1.pmax_stc": "50 kW", "grounding.declared.iec.functional_earth_fuse": "3 A"}, "about": "grounding", "verdict": "breaks"},
	"100 kW: 3 A": {"design": "meets", "facts": {"pv_input.main.1.pmax_stc": "100 kW", "grounding.declared.iec.functional_earth_fuse": "3 A"}, "about": "grounding", "verdict": "meets"},
	"100 kW: 3.1 A": {"design": "meets", "facts": {"pv_input.main.1.pmax_stc": "100 kW", "grounding.declared.iec.functional_earth_fuse": "3.1 A"}, "about": "grounding", "verdict": "breaks"},
	"beyond 100 kW": {"design": "meets", "facts": {"pv_input.main.1.pmax_stc": "100.1 kW"}, "about": "grounding", "verdict": "does_not_apply"},
	"floating": {"design": "meets", "facts": {"grounding.dc": "floating"}, "about": "grounding", "verdict": "does_not_apply"},
	"solid": {"design": "meets", "facts": {"grounding.declared.iec.earthing": "solid"}, "about": "grounding", "verdict": "does_not_apply"},
	"earthing silent": {"design": "meets", "facts": {"grounding.declared.iec.earthing": null}, "about": "grounding", "verdict": "unproven"},
	"unknown panel.fen-200.pmax": {"design": "meets", "facts": {"panel.fen-200.pmax": null}, "about": "grounding", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, functional_earth_fuse.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Without an array there is no such fuse.
test_no_array if {
	system := test.facts("meets")
	changed := object.union(system, {"pv_inputs": []})
	verdicts := test.verdicts(changed, functional_earth_fuse.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "grounding"]
}
