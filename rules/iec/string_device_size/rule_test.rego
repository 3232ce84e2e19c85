package codebooks.iec.string_device_size_test

import data.codebooks.iec.string_device_size

# Worked: Isc 12.28 A gives 18.42 A to 29.47 A, and panels for 20 A leave 20 A (published example
# after IEC 62548). Isc 10.5 A and 15 A: 1.1 x 1.25 x 10.5 = 14.44 A meets, 1.5 x 10.5 = 15.75 A breaks.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"1.5 x Isc: exactly at the limit": {"design": "meets", "facts": {"protection.string.south.a.rating": "15.6 A"}, "about": "string.south.a", "which": "least", "verdict": "meets"},
	"1.5 x Isc: a step inside": {"design": "meets", "facts": {"protection.string.south.a.rating": "15.6156 A"}, "about": "string.south.a", "which": "least", "verdict": "meets"},
	"1.5 x Isc: a step beyond": {"design": "meets", "facts": {"protection.string.south.a.rating": "15.5844 A"}, "about": "string.south.a", "which": "least", "verdict": "breaks"},
	"1.5 x Isc: unknown": {"design": "meets", "facts": {"protection.string.south.a.rating": null}, "about": "string.south.a", "which": "least", "verdict": "unproven"},
	"the panels' rating: exactly at the limit": {"design": "meets", "facts": {"protection.string.south.a.rating": "20 A"}, "about": "string.south.a", "which": "most", "verdict": "meets"},
	"the panels' rating: a step inside": {"design": "meets", "facts": {"protection.string.south.a.rating": "19.98 A"}, "about": "string.south.a", "which": "most", "verdict": "meets"},
	"the panels' rating: a step beyond": {"design": "meets", "facts": {"protection.string.south.a.rating": "20.02 A"}, "about": "string.south.a", "which": "most", "verdict": "breaks"},
	"the panels' rating: unknown": {"design": "meets", "facts": {"protection.string.south.a.rating": null}, "about": "string.south.a", "which": "most", "verdict": "unproven"},
	"Isc 10.5 A, 15 A: 15.75 A is due": {"design": "meets", "facts": {"panel.fen-200.isc": "10.5 A", "protection.string.south.a.rating": "15 A"}, "about": "string.south.a", "which": "least", "verdict": "breaks"},
	"Isc 10.5 A, 15 A: by 712 14.44 A": {"design": "meets", "facts": {"panel.fen-200.isc": "10.5 A", "protection.string.south.a.rating": "15 A", "param.iec.string_fuse_school": "hd_712"}, "about": "string.south.a", "which": "least", "verdict": "meets"},
	"by 712 exactly 14.4375 A": {"design": "meets", "facts": {"panel.fen-200.isc": "10.5 A", "protection.string.south.a.rating": "14.4375 A", "param.iec.string_fuse_school": "hd_712"}, "about": "string.south.a", "which": "least", "verdict": "meets"},
	"by 712 a step below": {"design": "meets", "facts": {"panel.fen-200.isc": "10.5 A", "protection.string.south.a.rating": "14.43 A", "param.iec.string_fuse_school": "hd_712"}, "about": "string.south.a", "which": "least", "verdict": "breaks"},
	"Isc 12.28 A, 20 A: 18.42 A at least": {"design": "meets", "facts": {"panel.fen-200.isc": "12.28 A", "protection.string.south.a.rating": "20 A"}, "about": "string.south.a", "which": "least", "verdict": "meets"},
	"Isc 12.28 A, 20 A: panels' 20 A at most": {"design": "meets", "facts": {"panel.fen-200.isc": "12.28 A", "protection.string.south.a.rating": "20 A"}, "about": "string.south.a", "which": "most", "verdict": "meets"},
	"Isc 12.28 A, panels for 30 A: 29.472 A at most": {"design": "meets", "facts": {"panel.fen-200.isc": "12.28 A", "panel.fen-200.max_series_fuse": "30 A", "protection.string.south.a.rating": "29.472 A"}, "about": "string.south.a", "which": "most", "verdict": "meets"},
	"Isc 12.28 A, panels for 30 A: 29.48 A is more": {"design": "meets", "facts": {"panel.fen-200.isc": "12.28 A", "panel.fen-200.max_series_fuse": "30 A", "protection.string.south.a.rating": "29.48 A"}, "about": "string.south.a", "which": "most", "verdict": "breaks"},
	"by 712 no upper end but the panels'": {"design": "meets", "facts": {"panel.fen-200.isc": "8 A", "protection.string.south.a.rating": "20 A", "param.iec.string_fuse_school": "hd_712"}, "about": "string.south.a", "which": "most", "verdict": "meets"},
	"Isc 8 A, the others 20 A in bright sun: no device is due, 20 A": {"design": "meets", "facts": {"panel.fen-200.isc": "8 A", "protection.string.south.a.rating": "20 A"}, "about": "string.south.a", "which": "most", "verdict": "meets"},
	"Isc 8 A: beyond the panels' rating": {"design": "meets", "facts": {"panel.fen-200.isc": "8 A", "protection.string.south.a.rating": "20.1 A"}, "about": "string.south.a", "which": "most", "verdict": "breaks"},
	"Isc 8.05 A, the others 20.1 A: due, 2.4 x 8.05 = 19.32 A": {"design": "meets", "facts": {"panel.fen-200.isc": "8.05 A", "protection.string.south.a.rating": "19.32 A"}, "about": "string.south.a", "which": "most", "verdict": "meets"},
	"Isc 8.05 A, 19.4 A": {"design": "meets", "facts": {"panel.fen-200.isc": "8.05 A", "protection.string.south.a.rating": "19.4 A"}, "about": "string.south.a", "which": "most", "verdict": "breaks"},
	"Isc 8 A, 20 A, what feeds back unknown": {"design": "meets", "facts": {"panel.fen-200.isc": "8 A", "protection.string.south.a.rating": "20 A", "controller.reed-70.pv_backfeed_max": null}, "about": "string.south.a", "which": "most", "verdict": "unproven"},
	"Isc 8 A, 19.2 A, what feeds back unknown": {"design": "meets", "facts": {"panel.fen-200.isc": "8 A", "protection.string.south.a.rating": "19.2 A", "controller.reed-70.pv_backfeed_max": null}, "about": "string.south.a", "which": "most", "verdict": "meets"},
	"Isc 8 A, 20 A, and 1 A fed back": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": "1 A", "panel.fen-200.isc": "8 A", "protection.string.south.a.rating": "20 A"}, "about": "string.south.a", "which": "most", "verdict": "breaks"},
	"Isc 8 A, 20 A, KI of 1.3": {"design": "meets", "facts": {"param.iec.ki": 1.3, "panel.fen-200.isc": "8 A", "protection.string.south.a.rating": "20 A"}, "about": "string.south.a", "which": "most", "verdict": "breaks"},
	"unknown panel.fen-200.max_series_fuse of most": {"design": "meets", "facts": {"panel.fen-200.max_series_fuse": null}, "about": "string.south.a", "which": "most", "verdict": "unproven"},
	"unknown panel.fen-200.isc of least": {"design": "meets", "facts": {"panel.fen-200.isc": null}, "about": "string.south.a", "which": "least", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, string_device_size.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Two verdicts, and no word that it has no device.
test_verdicts_on_string if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, string_device_size.check, {}) with input as system
	{"least", "most"} == {object.get(v, "which", "") | some v in verdicts; v.about == "string.south.a"}
}

# Without a device there is none to size.
test_no_device if {
	system := test.facts("meets")
	changed := object.union(system, {"strings": [object.union(s, {"protections": []}) | some s in system.strings]})
	verdicts := test.verdicts(changed, string_device_size.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "string.south.a"]
}
