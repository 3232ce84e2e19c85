package codebooks.iec.pv_fault_current_test

import data.codebooks.iec.pv_fault_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"two others, by the maker's ampacity: exactly at the limit": {"design": "breaks", "facts": {"cable_run.string.south.a.material": "Al", "cable_run.string.south.a.ampacity": "26 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"two others, by the maker's ampacity: a step inside": {"design": "breaks", "facts": {"cable_run.string.south.a.material": "Al", "cable_run.string.south.a.ampacity": "26.026 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"two others, by the maker's ampacity: a step beyond": {"design": "breaks", "facts": {"cable_run.string.south.a.material": "Al", "cable_run.string.south.a.ampacity": "25.974 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"two others, by the maker's ampacity: unknown": {"design": "breaks", "facts": {"cable_run.string.south.a.material": "Al", "cable_run.string.south.a.ampacity": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"two strings: one other, 13 A": {"design": "meets", "facts": {}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"three strings in the hottest air of the table": {"design": "breaks", "facts": {"cable_run.string.south.a.ambient": "80 degC"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"with a fuse": {"design": "meets", "facts": {}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"array: what feeds back at the limit": {"design": "breaks", "facts": {"controller.reed-70.pv_backfeed_max": "75.69 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"array: what feeds back a step above": {"design": "breaks", "facts": {"controller.reed-70.pv_backfeed_max": "87.01 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"array: back-feed unknown": {"design": "breaks", "facts": {"controller.reed-70.pv_backfeed_max": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"back-feed unknown": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"two strings of 10.4 A, 18 A fed back, behind a device of 10 A: 23 A": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": "18.2 A", "protection.array.south.rating": "10 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"the same by 712, which does not count the device: 31.2 A": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": "18.2 A", "protection.array.south.rating": "10 A", "param.iec.string_fuse_school": "hd_712"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"insulation unknown": {"design": "breaks", "facts": {"cable_run.string.south.a.insulation": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"one string, its own 1.25 x 10.4 A: exactly": {"design": "breaks", "facts": {"cable_run.string.south.a.material": "Al", "cable_run.string.south.a.ampacity": "13 A", "string.south.a.fault_current": "0 A", "pv_input.main.1.isc_stc": "10.4 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"one string, its own 1.25 x 10.4 A: a step beyond": {"design": "breaks", "facts": {"cable_run.string.south.a.material": "Al", "cable_run.string.south.a.ampacity": "12.99 A", "string.south.a.fault_current": "0 A", "pv_input.main.1.isc_stc": "10.4 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"two strings behind a device of 10 A, 13 A + 10 A: exactly": {"design": "meets", "facts": {"cable_run.string.south.a.material": "Al", "cable_run.string.south.a.ampacity": "23 A", "controller.reed-70.pv_backfeed_max": "18.2 A", "protection.array.south.rating": "10 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"two strings behind a device of 10 A, 13 A + 10 A: a step beyond": {"design": "meets", "facts": {"cable_run.string.south.a.material": "Al", "cable_run.string.south.a.ampacity": "22.99 A", "controller.reed-70.pv_backfeed_max": "18.2 A", "protection.array.south.rating": "10 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"array alone, 1.25 x 31.2 A: exactly": {"design": "breaks", "facts": {"cable_run.array.south.material": "Al", "cable_run.array.south.ampacity": "39 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"array alone, 1.25 x 31.2 A: a step beyond": {"design": "breaks", "facts": {"cable_run.array.south.material": "Al", "cable_run.array.south.ampacity": "38.99 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"array fed by others, 1.25 x (72 A - 31.2 A): exactly": {"design": "breaks", "facts": {"cable_run.array.south.material": "Al", "cable_run.array.south.ampacity": "51 A", "pv_input.main.1.isc_stc": "72 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"array fed by others, 1.25 x (72 A - 31.2 A): a step beyond": {"design": "breaks", "facts": {"cable_run.array.south.material": "Al", "cable_run.array.south.ampacity": "50.99 A", "pv_input.main.1.isc_stc": "72 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, pv_fault_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# A string cable with a fuse is judged by that.
test_string_with_a_fuse if {
	system := test.facts("meets")
	changed := object.union(system, {"cable_runs": [object.union(r, {"protections": system.protections}) | some r in system.cable_runs]})
	verdicts := test.verdicts(changed, pv_fault_current.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "cable_run.string.south.a"]
}

# On the bank's side a missing device is another rule's business.
test_bare_on_the_bank if {
	system := test.facts("meets")
	changed := object.union(system, {"cable_runs": [object.union(r, {"protections": []}) | some r in system.cable_runs]})
	verdicts := test.verdicts(changed, pv_fault_current.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "cable_run.charger.main"]
}
