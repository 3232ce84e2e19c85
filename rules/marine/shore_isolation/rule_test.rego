package codebooks.marine.shore_isolation_test

import data.codebooks.marine.shore_isolation

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"an isolator": {"design": "meets", "facts": {}, "about": "charge_source.shore", "verdict": "meets"},
	"a transformer": {"design": "meets", "facts": {"charge_source.shore.declared.marine.shore_isolation": "isolating_transformer"}, "about": "charge_source.shore", "verdict": "meets"},
	"none": {"design": "meets", "facts": {"charge_source.shore.declared.marine.shore_isolation": "none"}, "about": "charge_source.shore", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"charge_source.shore.declared.marine.shore_isolation": null}, "about": "charge_source.shore", "verdict": "unproven"},
	"an alternator": {"design": "meets", "facts": {}, "about": "charge_source.engine", "verdict": "does_not_apply"},
	"shore power or not": {"design": "meets", "facts": {"charge_source.shore.declared.marine.shore_power": null}, "about": "charge_source.shore", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "charge_source.shore", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "charge_source.shore", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, shore_isolation.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
