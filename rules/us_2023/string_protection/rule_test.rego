package codebooks.us_2023.string_protection_test

import data.codebooks.us_2023.string_protection

# Check value B8: two strings of 13.9 A and 20 A panels: 17.375 A, no fuse; three: 34.75 A, fuses
# (690.9(A) from memory, recomputed). 13.9 A panels with 20 A series fuses have no admissible fuse at
# all: us_2023.device_continuous asks 21.7 A.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"protection.string.south.a.rating": "20 A"}, "about": "string.south.a", "which": "fuse", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"protection.string.south.a.rating": "19.998 A"}, "about": "string.south.a", "which": "fuse", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"protection.string.south.a.rating": "20.002 A"}, "about": "string.south.a", "which": "fuse", "verdict": "breaks"},
	"no fuse, three others: two of 8 A, exactly 20 A": {"design": "breaks", "facts": {"panel.sage-330.isc": "8 A"}, "about": "string.south.a", "which": "panels", "verdict": "meets"},
	"no fuse, two others a step above 8 A": {"design": "breaks", "facts": {"panel.sage-330.isc": "8.001 A"}, "about": "string.south.a", "which": "panels", "verdict": "breaks"},
	"no fuse, one other of 13.9 A: 17.375 A within 20 A": {"design": "breaks", "facts": {"string.south.a.fault_current": "13.9 A", "pv_input.main.1.isc_stc": "27.8 A", "string.south.a.isc_stc": "13.9 A"}, "about": "string.south.a", "which": "panels", "verdict": "meets"},
	"no fuse, two others of 13.9 A: 34.75 A": {"design": "breaks", "facts": {"string.south.a.fault_current": "27.8 A", "pv_input.main.1.isc_stc": "41.7 A", "string.south.a.isc_stc": "13.9 A"}, "about": "string.south.a", "which": "panels", "verdict": "breaks"},
	"no fuse, the conductor carries 39.05 A: 25.5 A": {"design": "breaks", "facts": {}, "about": "string.south.a", "which": "conductor", "verdict": "meets"},
	"no fuse, 25.5 A in a conductor of 25.4 A": {"design": "breaks", "facts": {"cable_run.string.south.a.ambient": "80 degC", "cable_run.string.south.a.grouped": 2, "cable_run.string.south.a.size": "12 AWG"}, "about": "string.south.a", "which": "conductor", "verdict": "breaks"},
	"no fuse, exactly what the conductor carries: 0.41 x 40 A = 16.4 A": {"design": "breaks", "facts": {"string.south.a.fault_current": "13.12 A", "pv_input.main.1.isc_stc": "23.32 A", "string.south.a.isc_stc": "10.2 A", "cable_run.string.south.a.ambient": "80 degC", "cable_run.string.south.a.size": "12 AWG"}, "about": "string.south.a", "which": "conductor", "verdict": "meets"},
	"with a fuse the conductor is not asked": {"design": "meets", "facts": {}, "about": "string.south.a", "which": "conductor", "verdict": "none"},
	"with a fuse the others are not asked": {"design": "meets", "facts": {}, "about": "string.south.a", "which": "panels", "verdict": "none"},
	"no fuse, on a boat": {"design": "breaks", "facts": {"site.place": "boat"}, "about": "string.south.a", "which": "panels", "verdict": "does_not_apply"},
	"no fuse, its conductor on a boat": {"design": "breaks", "facts": {"site.place": "boat"}, "about": "string.south.a", "which": "conductor", "verdict": "does_not_apply"},
	"back-feed unknown, but the strings alone exceed the rating": {"design": "breaks", "facts": {"controller.butte-60.pv_backfeed_max": null}, "about": "string.south.a", "which": "panels", "verdict": "breaks"},
	"back-feed unknown, the strings alone within it": {"design": "breaks", "facts": {"controller.butte-60.pv_backfeed_max": null, "panel.sage-330.isc": "6 A"}, "about": "string.south.a", "which": "panels", "verdict": "unproven"},
	"unknown panel.sage-330.max_series_fuse": {"design": "meets", "facts": {"panel.sage-330.max_series_fuse": null}, "about": "string.south.a", "which": "fuse", "verdict": "unproven"},
	"unknown protection.string.south.a.rating": {"design": "meets", "facts": {"protection.string.south.a.rating": null}, "about": "string.south.a", "which": "fuse", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "string.south.a", "which": "fuse", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, string_protection.check, c.facts) with input as system
	[x | x := c.verdict; x != "none"] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
