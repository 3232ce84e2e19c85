package codebooks.us_2023.conductor_protected_test

import data.codebooks.us_2023.conductor_protected

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a charger's with a breaker": {"design": "meets", "facts": {}, "about": "cable_run.charger.main", "verdict": "meets"},
	"without": {"design": "breaks", "facts": {}, "about": "cable_run.charger.main", "verdict": "breaks"},
	"on a boat": {"design": "breaks", "facts": {"site.place": "boat"}, "about": "cable_run.charger.main", "verdict": "does_not_apply"},
	"where it stands unknown": {"design": "breaks", "facts": {"site.place": null}, "about": "cable_run.charger.main", "verdict": "unproven"},
	"an array's without a breaker: 1.25 x 30.6 A": {"design": "breaks", "facts": {"cable_run.array.south.current": "30.6 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"an array's, exactly what it carries: 65.25 A": {"design": "breaks", "facts": {"cable_run.array.south.current": "52.2 A", "cable_run.array.south.fault_current_near": "52.2 A", "pv_input.main.1.isc_stc": "52.2 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"an array's, a step above": {"design": "breaks", "facts": {"cable_run.array.south.current": "52.3 A", "cable_run.array.south.fault_current_near": "52.3 A", "pv_input.main.1.isc_stc": "52.3 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"two arrays: the other feeds 1.25 x 52.2 A: exactly": {"design": "breaks", "facts": {"cable_run.array.south.current": "30.6 A", "cable_run.array.south.fault_current_near": "82.8 A", "pv_input.main.1.isc_stc": "82.8 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"two arrays: the other feeds a step more": {"design": "breaks", "facts": {"cable_run.array.south.current": "30.6 A", "cable_run.array.south.fault_current_near": "82.9 A", "pv_input.main.1.isc_stc": "82.9 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"back-feed unknown": {"design": "breaks", "facts": {"controller.butte-60.pv_backfeed_max": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"an array's on a boat": {"design": "breaks", "facts": {"site.place": "boat"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"a string's with a fuse": {"design": "meets", "facts": {}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_protected.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
