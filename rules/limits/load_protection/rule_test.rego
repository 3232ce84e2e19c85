package codebooks.limits.load_protection_test

import data.codebooks.limits.load_protection

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"with one": {"design": "meets", "facts": {}, "about": "load.lights", "verdict": "meets"},
	"without": {"design": "breaks", "facts": {}, "about": "load.lights", "verdict": "breaks"},
	"on an inverter": {"design": "meets", "facts": {}, "about": "load.pump", "verdict": "does_not_apply"},
	"behind a converter": {"design": "meets", "facts": {}, "about": "load.radio", "verdict": "does_not_apply"},
	"on load terminals": {"design": "meets", "facts": {}, "about": "load.porch", "verdict": "does_not_apply"},
	"behind a converter, with a fuse": {"design": "meets", "facts": {"converter.rush-20.current": "60 A"}, "about": "load.heater", "verdict": "does_not_apply"},
	"behind a converter, no fuse, exactly at the limit": {"design": "meets", "facts": {"converter.rush-20.current": "25 A"}, "about": "load.fan", "verdict": "meets"},
	"behind a converter, no fuse, a step above": {"design": "meets", "facts": {"converter.rush-20.current": "25.0025 A"}, "about": "load.fan", "verdict": "breaks"},
	"behind a converter, no fuse, ampacity unknown": {"design": "meets", "facts": {"cable_run.load.fan.ampacity": null}, "about": "load.fan", "verdict": "unproven"},
	"behind a converter, no fuse, two conductors a pole": {"design": "meets", "facts": {"converter.rush-20.current": "50 A", "cable_run.load.fan.per_pole": 2}, "about": "load.fan", "verdict": "meets"},
	"behind a converter, no fuse, thin flex": {"design": "breaks", "facts": {}, "about": "load.fan", "verdict": "breaks"},
	"on load terminals, no fuse, exactly at the limit": {"design": "meets", "facts": {"controller.reed-70.load_current_max": "20 A"}, "about": "load.gate", "verdict": "meets"},
	"on load terminals, no fuse, a step above": {"design": "meets", "facts": {"controller.reed-70.load_current_max": "20.002 A"}, "about": "load.gate", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, load_protection.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What an inverter feeds is alternating current, fuse or none.
test_bare_behind_an_inverter if {
	system := test.facts("meets")
	run := [r | some r in system.cable_runs; r.id == "cable_run.load.lights"]
	moved := object.union(system, {"loads": [object.union(l, {"cable_runs": run}) | some l in system.loads; l.id == "load.pump"]})
	verdicts := test.verdicts(moved, load_protection.check, {}) with input as moved
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "load.pump"]
}
