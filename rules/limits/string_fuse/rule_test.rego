package codebooks.limits.string_fuse_test

import data.codebooks.limits.string_fuse

# Published example of IEC 62548 (transcribed): four strings of 12.28 A and panels for a 20 A
# fuse: 36.84 A from the three others exceeds 20 A, so fuses are needed; 20 A serves. Unlike strings
# are judged one by one: 13.9 A beside a panel with a 10 A series fuse needs one with two strings
# already.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"protection.string.south.a.rating": "20 A"}, "about": "string.south.a", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"protection.string.south.a.rating": "19.998 A"}, "about": "string.south.a", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"protection.string.south.a.rating": "20.002 A"}, "about": "string.south.a", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"protection.string.south.a.rating": null}, "about": "string.south.a", "verdict": "unproven"},
	"four strings of 12.28 A, 20 A fuse": {"design": "meets", "facts": {"string.south.a.fault_current": "36.84 A"}, "about": "string.south.a", "verdict": "meets"},
	"four strings of 12.28 A, 25 A fuse": {"design": "meets", "facts": {"string.south.a.fault_current": "36.84 A", "protection.string.south.a.rating": "25 A"}, "about": "string.south.a", "verdict": "breaks"},
	"four strings of 12.28 A, no fuse": {"design": "breaks", "facts": {"string.south.a.fault_current": "36.84 A"}, "about": "string.south.a", "verdict": "breaks"},
	"13.9 A beside a 10 A series fuse, no fuse": {"design": "breaks", "facts": {"string.south.a.fault_current": "13.9 A", "panel.fen-200.max_series_fuse": "10 A"}, "about": "string.south.a", "verdict": "breaks"},
	"no fuse, the others exactly at the rating": {"design": "breaks", "facts": {"string.south.a.fault_current": "14.8 A"}, "about": "string.south.a", "verdict": "meets"},
	"no fuse, the others a step above the rating": {"design": "breaks", "facts": {"string.south.a.fault_current": "14.801 A"}, "about": "string.south.a", "verdict": "breaks"},
	"no fuse, two others of 9.8 A by their sheets and 20 A panels: 24.5 A in bright sun": {"design": "breaks", "facts": {"panel.fen-200.isc": "9.8 A"}, "about": "string.south.a", "verdict": "breaks"},
	"no fuse, two others of 8 A and 20 A panels: exactly 20 A in bright sun": {"design": "breaks", "facts": {"panel.fen-200.isc": "8 A"}, "about": "string.south.a", "verdict": "meets"},
	"no fuse, two others a step above 8 A": {"design": "breaks", "facts": {"panel.fen-200.isc": "8.001 A"}, "about": "string.south.a", "verdict": "breaks"},
	"no fuse, and what feeds back unknown": {"design": "breaks", "facts": {"string.south.a.fault_current": null}, "about": "string.south.a", "verdict": "unproven"},
	"back-feed unknown, but the strings alone exceed the rating": {"design": "breaks", "facts": {"controller.reed-70.pv_backfeed_max": null}, "about": "string.south.a", "verdict": "breaks"},
	"back-feed unknown, but two strings alone stay below with a fuse that serves": {"design": "meets", "facts": {"string.south.a.fault_current": null}, "about": "string.south.a", "verdict": "meets"},
	"fuse too large, whether it is needed unknown": {"design": "meets", "facts": {"string.south.a.fault_current": null, "protection.string.south.a.rating": "25 A"}, "about": "string.south.a", "verdict": "unproven"},
	"unknown panel.fen-200.max_series_fuse": {"design": "meets", "facts": {"panel.fen-200.max_series_fuse": null}, "about": "string.south.a", "verdict": "unproven"},
	"fuse too large, but none is needed": {"design": "meets", "facts": {"string.south.a.fault_current": "10.4 A", "protection.string.south.a.rating": "25 A"}, "about": "string.south.a", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, string_fuse.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
