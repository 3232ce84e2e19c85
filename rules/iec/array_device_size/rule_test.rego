package codebooks.iec.array_device_size_test

import data.codebooks.iec.array_device_size

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"1.25 x 31.2 A: exactly at the limit": {"design": "meets", "facts": {"protection.array.south.rating": "39 A"}, "about": "protection.array.south", "which": "least", "verdict": "meets"},
	"1.25 x 31.2 A: a step inside": {"design": "meets", "facts": {"protection.array.south.rating": "39.039 A"}, "about": "protection.array.south", "which": "least", "verdict": "meets"},
	"1.25 x 31.2 A: a step beyond": {"design": "meets", "facts": {"protection.array.south.rating": "38.961 A"}, "about": "protection.array.south", "which": "least", "verdict": "breaks"},
	"1.25 x 31.2 A: unknown": {"design": "meets", "facts": {"protection.array.south.rating": null}, "about": "protection.array.south", "which": "least", "verdict": "unproven"},
	"2.4 x 31.2 A: exactly at the limit": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": "0.1 A", "protection.array.south.rating": "74.88 A"}, "about": "protection.array.south", "which": "most", "verdict": "meets"},
	"2.4 x 31.2 A: a step inside": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": "0.1 A", "protection.array.south.rating": "74.80512 A"}, "about": "protection.array.south", "which": "most", "verdict": "meets"},
	"2.4 x 31.2 A: a step beyond": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": "0.1 A", "protection.array.south.rating": "74.95488 A"}, "about": "protection.array.south", "which": "most", "verdict": "breaks"},
	"2.4 x 31.2 A: unknown": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": "0.1 A", "protection.array.south.rating": null}, "about": "protection.array.south", "which": "most", "verdict": "unproven"},
	"80 A, and nothing feeds back": {"design": "meets", "facts": {"protection.array.south.rating": "80 A", "controller.reed-70.pv_backfeed_max": "0 A"}, "about": "protection.array.south", "which": "most", "verdict": "does_not_apply"},
	"80 A, and whether anything feeds back unknown": {"design": "meets", "facts": {"protection.array.south.rating": "80 A", "controller.reed-70.pv_backfeed_max": null}, "about": "protection.array.south", "which": "most", "verdict": "unproven"},
	"80 A on a simple controller": {"design": "meets", "facts": {"protection.array.south.rating": "80 A", "controller.reed-70.kind": "pwm", "controller.reed-70.pv_backfeed_max": null}, "about": "protection.array.south", "which": "most", "verdict": "breaks"},
	"80 A, kind of controller unknown": {"design": "meets", "facts": {"protection.array.south.rating": "80 A", "controller.reed-70.kind": null}, "about": "protection.array.south", "which": "most", "verdict": "unproven"},
	"unknown panel.fen-200.isc of most": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": "0.1 A", "panel.fen-200.isc": null}, "about": "protection.array.south", "which": "most", "verdict": "unproven"},
	"a load's": {"design": "meets", "facts": {}, "about": "protection.load.lights", "verdict": "does_not_apply"},
	"1.25 x 31.2 A, whatever a fault brings": {"design": "meets", "facts": {"protection.array.south.rating": "39 A", "protection.array.south.fault_current": "60 A"}, "about": "protection.array.south", "which": "least", "verdict": "meets"},
	"2.4 x 31.2 A, whatever a fault brings": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": "0.1 A", "protection.array.south.rating": "74.88 A", "protection.array.south.fault_current": "10 A"}, "about": "protection.array.south", "which": "most", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, array_device_size.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Two verdicts, and no word that the rule does not apply.
test_verdicts_on_south if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, array_device_size.check, {}) with input as system
	{"least", "most"} == {object.get(v, "which", "") | some v in verdicts; v.about == "protection.array.south"}
}

# Nothing but that is said of a device on the bank's side.
test_verdicts_on_lights if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, array_device_size.check, {}) with input as system
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "protection.load.lights"]
}
