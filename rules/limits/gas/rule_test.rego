package codebooks.limits.gas_test

import data.codebooks.limits.gas

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"no": {"design": "meets", "facts": {"charger.main.over_bank": false}, "about": "charger.main", "verdict": "meets"},
	"yes": {"design": "meets", "facts": {"charger.main.over_bank": true}, "about": "charger.main", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"charger.main.over_bank": null}, "about": "charger.main", "verdict": "unproven"},
	"AGM": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm"}, "about": "charger.main", "verdict": "does_not_apply"},
	"unknown battery.bog-12.chemistry": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "charger.main", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, gas.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
