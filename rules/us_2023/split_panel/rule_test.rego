package codebooks.us_2023.split_panel_test

import data.codebooks.us_2023.split_panel

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"none": {"design": "meets", "facts": {}, "about": "ac_output.shop", "verdict": "meets"},
	"multiwire": {"design": "meets", "facts": {"ac_output.shop.declared.us_2023.multiwire": true}, "about": "ac_output.shop", "verdict": "breaks"},
	"no such panel": {"design": "meets", "facts": {"ac_output.shop.declared.us_2023.split_panel": false, "ac_output.shop.declared.us_2023.multiwire": true}, "about": "ac_output.shop", "verdict": "does_not_apply"},
	"unknown ac_output.shop.declared.us_2023.multiwire": {"design": "meets", "facts": {"ac_output.shop.declared.us_2023.multiwire": null}, "about": "ac_output.shop", "verdict": "unproven"},
	"unknown ac_output.shop.declared.us_2023.split_panel": {"design": "meets", "facts": {"ac_output.shop.declared.us_2023.split_panel": null}, "about": "ac_output.shop", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "ac_output.shop", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, split_panel.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
