package codebooks.marine.alternator_test

import data.codebooks.marine.alternator

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"protected": {"design": "meets", "facts": {}, "about": "charge_source.engine", "verdict": "meets"},
	"not protected": {"design": "meets", "facts": {"charge_source.engine.declared.marine.protected_from_loss": false}, "about": "charge_source.engine", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"charge_source.engine.declared.marine.protected_from_loss": null}, "about": "charge_source.engine", "verdict": "unproven"},
	"self-limiting": {"design": "meets", "facts": {"charge_source.engine.declared.marine.self_limiting": true, "charge_source.engine.declared.marine.protected_from_loss": false}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "charge_source.engine", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, alternator.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
