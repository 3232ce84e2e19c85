package codebooks.limits.polarity_marks_test

import data.codebooks.limits.polarity_marks

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"by its marks": {"design": "meets", "facts": {}, "about": "protection.array.south", "verdict": "meets"},
	"the other way": {"design": "meets", "facts": {"protection.array.south.declared.limits.wired_by_marks": false}, "about": "protection.array.south", "verdict": "breaks"},
	"how unknown": {"design": "meets", "facts": {"protection.array.south.declared.limits.wired_by_marks": null}, "about": "protection.array.south", "verdict": "unproven"},
	"not polarized": {"design": "meets", "facts": {"protection.array.south.polarized": false, "protection.array.south.declared.limits.wired_by_marks": null}, "about": "protection.array.south", "verdict": "does_not_apply"},
	"polarized or not unknown": {"design": "meets", "facts": {"protection.array.south.polarized": null, "protection.array.south.declared.limits.wired_by_marks": null}, "about": "protection.array.south", "verdict": "unproven"},
	"a fuse": {"design": "meets", "facts": {"protection.array.south.kind": "fuse", "protection.array.south.declared.limits.wired_by_marks": null}, "about": "protection.array.south", "verdict": "does_not_apply"},
	"where current can reverse": {"design": "meets", "facts": {"protection.array.south.two_way": true, "protection.array.south.declared.limits.wired_by_marks": null}, "about": "protection.array.south", "verdict": "does_not_apply"},
	"a controller's": {"design": "meets", "facts": {"protection.charger.main.polarized": true}, "about": "protection.charger.main", "verdict": "does_not_apply"},
	"an engine's": {"design": "meets", "facts": {"protection.charge_source.engine.kind": "breaker"}, "about": "protection.charge_source.engine", "verdict": "does_not_apply"},
	"a bank's": {"design": "meets", "facts": {"protection.bank.house.kind": "breaker"}, "about": "protection.bank.house", "verdict": "does_not_apply"},
	"a load's, polarized or not unknown": {"design": "meets", "facts": {"protection.load.lights.kind": "breaker"}, "about": "protection.load.lights", "verdict": "unproven"},
	"on the AC side": {"design": "meets", "facts": {}, "about": "protection.load.pump", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, polarity_marks.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# On the AC side nothing else is asked.
test_ac_side if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, polarity_marks.check, {}) with input as system
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "protection.load.pump"]
	["meets"] == [v.verdict | some v in verdicts; v.about == "protection.array.south"]
}
