package codebooks.limits.reverse_current_test

import data.codebooks.limits.reverse_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.reverse_current": "20 A"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.reverse_current": "19.998 A"}, "about": "pv_input.main.1", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.reverse_current": "20.002 A"}, "about": "pv_input.main.1", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"pv_input.main.1.reverse_current": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown rating": {"design": "meets", "facts": {"panel.fen-200.max_series_fuse": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"unknown isc": {"design": "breaks", "facts": {"panel.fen-200.isc": null}, "about": "pv_input.main.1", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, reverse_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# A string on another input counts for that one alone.
test_another_input if {
	system := test.facts("meets")
	other := [object.union(s, {"pv_input": {"id": "pv_input.other.1"}, "series_fuse_max": s.isc_stc}) | some s in system.strings]
	both := object.union(system, {"strings": array.concat(system.strings, other)})
	verdicts := test.verdicts(both, reverse_current.check, {"string.south.a.isc_stc": "0 A", "pv_input.main.1.reverse_current": "5 A"}) with input as both
	["meets"] == [v.verdict | some v in verdicts; v.about == "pv_input.main.1"]
}
