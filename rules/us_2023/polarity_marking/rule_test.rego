package codebooks.us_2023.polarity_marking_test

import data.codebooks.us_2023.polarity_marking

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"white": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.marking": "white"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"white, solidly grounded": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.marking": "white", "grounding.ground_fault_protection": false}, "about": "cable_run.array.south", "verdict": "meets"},
	"colors": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.marking": "color"}, "about": "cable_run.array.south", "verdict": "meets"},
	"a bank's": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"unknown cable_run.array.south.declared.us_2023.marking": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.marking": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, polarity_marking.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
