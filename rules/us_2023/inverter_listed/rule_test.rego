package codebooks.us_2023.inverter_listed_test

import data.codebooks.us_2023.inverter_listed

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"listed": {"design": "meets", "facts": {}, "about": "ac_output.shop", "verdict": "meets"},
	"not": {"design": "meets", "facts": {"ac_output.shop.declared.us_2023.listed": false}, "about": "ac_output.shop", "verdict": "breaks"},
	"unknown ac_output.shop.declared.us_2023.listed": {"design": "meets", "facts": {"ac_output.shop.declared.us_2023.listed": null}, "about": "ac_output.shop", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "ac_output.shop", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, inverter_listed.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
