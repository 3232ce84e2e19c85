package codebooks.limits.conductor_carries_test

import data.codebooks.limits.conductor_carries

# 1.25 for bright sun on the PV side: 690.8(A)(1) and IEC 62548-1 take the same (transcribed).

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.current": "64 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"cable_run.array.south.current": "63.9936 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"cable_run.array.south.current": "64.0064 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"bank side: exactly at the limit": {"design": "meets", "facts": {"cable_run.charger.main.current": "110 A"}, "about": "cable_run.charger.main", "verdict": "meets"},
	"bank side: a step above": {"design": "meets", "facts": {"cable_run.charger.main.current": "110.011 A"}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"a string's: exactly at the limit": {"design": "meets", "facts": {"cable_run.string.south.a.current": "32 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"a string's: a step above": {"design": "meets", "facts": {"cable_run.string.south.a.current": "32.0032 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"no fuse, what the others feed exactly at the limit": {"design": "breaks", "facts": {"cable_run.string.south.a.fault_current_near": "50.4 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"no fuse, what the others feed a step above": {"design": "breaks", "facts": {"cable_run.string.south.a.fault_current_near": "50.404 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"no fuse, what the controller feeds unknown": {"design": "breaks", "facts": {"controller.reed-70.pv_backfeed_max": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"with a fuse it does not matter": {"design": "meets", "facts": {"controller.reed-70.pv_backfeed_max": null}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"unknown": {"design": "meets", "facts": {"cable_run.array.south.current": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown cable_run.array.south.ampacity": {"design": "meets", "facts": {"cable_run.array.south.ampacity": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown panel.fen-200.isc": {"design": "meets", "facts": {"panel.fen-200.isc": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"two conductors a pole, exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.current": "128 A", "cable_run.array.south.per_pole": 2}, "about": "cable_run.array.south", "verdict": "meets"},
	"two conductors a pole, a step above": {"design": "meets", "facts": {"cable_run.array.south.current": "128.0128 A", "cable_run.array.south.per_pole": 2}, "about": "cable_run.array.south", "verdict": "breaks"},
	"no fuse, the string's own current exactly at the limit": {"design": "breaks", "facts": {"cable_run.string.south.a.fault_current_near": "10 A", "cable_run.string.south.a.current": "32 A"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"no fuse, the string's own current a step above": {"design": "breaks", "facts": {"cable_run.string.south.a.fault_current_near": "10 A", "cable_run.string.south.a.current": "32.0032 A"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_carries.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# On the bank's side a missing fuse is another rule's business: its fault current
# is thousands of amperes, and no conductor bears that.
test_bare_on_the_bank if {
	system := test.facts("meets")
	bare := object.union(system, {"cable_runs": [object.union(r, {"protections": []}) | some r in system.cable_runs]})
	verdicts := test.verdicts(bare, conductor_carries.check, {}) with input as bare
	["meets"] == [v.verdict | some v in verdicts; v.about == "cable_run.charger.main"]
}
