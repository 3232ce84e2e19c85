package codebooks.iec.string_device_test

import data.codebooks.iec.string_device

# Worked, three schools on one array: three strings of 9.0 A and panels for 20 A: IEC 62548 18.0 A,
# no device; by ISC MAX 22.5 A, a device; 712 22.5 A against 27 A, none. Four strings of 12.28 A:
# 36.84 A against 20 A (published example after IEC 62548).

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"two others of 9.0 A, 20 A panels: 18.0 A": {"design": "breaks", "facts": {"panel.fen-200.isc": "9 A"}, "about": "string.south.a", "verdict": "meets"},
	"by ISC MAX 22.5 A": {"design": "breaks", "facts": {"panel.fen-200.isc": "9 A", "param.iec.string_fuse_school": "isc_max"}, "about": "string.south.a", "verdict": "breaks"},
	"by 712 22.5 A against 27 A": {"design": "breaks", "facts": {"panel.fen-200.isc": "9 A", "param.iec.string_fuse_school": "hd_712"}, "about": "string.south.a", "verdict": "meets"},
	"by 712 exactly at 27 A": {"design": "breaks", "facts": {"panel.fen-200.isc": "10.8 A", "param.iec.string_fuse_school": "hd_712"}, "about": "string.south.a", "verdict": "meets"},
	"by 712 a step above": {"design": "breaks", "facts": {"panel.fen-200.isc": "10.801 A", "param.iec.string_fuse_school": "hd_712"}, "about": "string.south.a", "verdict": "breaks"},
	"by 712 two strings never": {"design": "meets", "facts": {"panel.fen-200.isc": "25 A", "param.iec.string_fuse_school": "hd_712"}, "about": "string.south.a", "verdict": "meets"},
	"exactly at the rating": {"design": "breaks", "facts": {"panel.fen-200.isc": "10 A"}, "about": "string.south.a", "verdict": "meets"},
	"a step above": {"design": "breaks", "facts": {"panel.fen-200.isc": "10.001 A"}, "about": "string.south.a", "verdict": "breaks"},
	"four strings of 12.28 A: 36.84 A": {"design": "breaks", "facts": {"string.south.a.fault_current": "36.84 A"}, "about": "string.south.a", "verdict": "breaks"},
	"exactly at the rating by ISC MAX": {"design": "breaks", "facts": {"panel.fen-200.isc": "8 A", "param.iec.string_fuse_school": "isc_max"}, "about": "string.south.a", "verdict": "meets"},
	"rating unknown": {"design": "meets", "facts": {"panel.fen-200.max_series_fuse": null}, "about": "string.south.a", "verdict": "unproven"},
	"back-feed unknown": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": null}, "about": "string.south.a", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, string_device.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# A string that has a device needs no other.
test_with_a_device if {
	system := test.facts("meets")
	changed := object.union(system, {"strings": [object.union(s, {"protections": system.protections}) | some s in system.strings]})
	verdicts := test.verdicts(changed, string_device.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "string.south.a"]
}
