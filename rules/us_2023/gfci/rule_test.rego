package codebooks.us_2023.gfci_test

import data.codebooks.us_2023.gfci

# 210.8 from memory.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"with": {"design": "meets", "facts": {}, "about": "ac_output.shop", "verdict": "meets"},
	"without": {"design": "meets", "facts": {"ac_output.shop.declared.us_2023.gfci": false}, "about": "ac_output.shop", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"ac_output.shop.declared.us_2023.gfci": null}, "about": "ac_output.shop", "verdict": "unproven"},
	"exactly 50 V": {"design": "meets", "facts": {"ac_output.shop.declared.us_2023.gfci": false, "inverter.basin-2400.ac_voltage": "50 V"}, "about": "ac_output.shop", "verdict": "does_not_apply"},
	"50.1 V": {"design": "meets", "facts": {"ac_output.shop.declared.us_2023.gfci": false, "inverter.basin-2400.ac_voltage": "50.1 V"}, "about": "ac_output.shop", "verdict": "breaks"},
	"voltage unknown": {"design": "meets", "facts": {"inverter.basin-2400.ac_voltage": null}, "about": "ac_output.shop", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat", "ac_output.shop.declared.us_2023.gfci": false}, "about": "ac_output.shop", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, gfci.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
