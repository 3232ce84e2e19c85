package codebooks.us_2023.dc_grounded_test

import data.codebooks.us_2023.dc_grounded

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly 60 V, floating": {"design": "meets", "facts": {"bank.house.nominal": "60 V", "grounding.dc": "floating", "grounding.ground_fault_protection": false}, "about": "bank.house", "verdict": "does_not_apply"},
	"60.1 V, floating, not watched": {"design": "meets", "facts": {"bank.house.nominal": "60.1 V", "grounding.dc": "floating", "grounding.ground_fault_protection": false}, "about": "bank.house", "verdict": "breaks"},
	"60.1 V, floating, watched": {"design": "meets", "facts": {"bank.house.nominal": "60.1 V", "grounding.dc": "floating"}, "about": "bank.house", "verdict": "meets"},
	"60.1 V, grounded": {"design": "meets", "facts": {"bank.house.nominal": "60.1 V", "grounding.ground_fault_protection": false}, "about": "bank.house", "verdict": "meets"},
	"60.1 V, silent": {"design": "meets", "facts": {"bank.house.nominal": "60.1 V", "grounding.dc": null, "grounding.ground_fault_protection": null}, "about": "bank.house", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, dc_grounded.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
