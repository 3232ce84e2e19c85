package codebooks.marine.battery_vented_test

import data.codebooks.marine.battery_vented

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"vented": {"design": "meets", "facts": {}, "about": "bank.start", "verdict": "meets"},
	"not vented": {"design": "meets", "facts": {"bank.start.declared.marine.vented": false}, "about": "bank.start", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"bank.start.declared.marine.vented": null}, "about": "bank.start", "verdict": "unproven"},
	"lithium": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "does_not_apply"},
	"AGM": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "bank.start.declared.marine.vented": false}, "about": "bank.start", "verdict": "breaks"},
	"unknown battery.bog-12.chemistry": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "bank.start", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.start", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "bank.start", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_vented.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
