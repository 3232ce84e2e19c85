package codebooks.us_2023.pv_device_pole_test

import data.codebooks.us_2023.pv_device_pole

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"alike": {"design": "meets", "facts": {}, "about": "protection.string.south.a", "which": "protection.array.south", "verdict": "meets"},
	"unlike": {"design": "meets", "facts": {"protection.string.south.a.declared.us_2023.pole": "negative"}, "about": "protection.string.south.a", "which": "protection.array.south", "verdict": "breaks"},
	"both poles": {"design": "meets", "facts": {"protection.string.south.a.declared.us_2023.pole": "both"}, "about": "protection.string.south.a", "which": "protection.array.south", "verdict": "does_not_apply"},
	"the other opens both": {"design": "meets", "facts": {"protection.array.south.declared.us_2023.pole": "both"}, "about": "protection.string.south.a", "which": "protection.array.south", "verdict": "does_not_apply"},
	"a PV device is not compared with the bank's": {"design": "meets", "facts": {}, "about": "protection.string.south.a", "which": "protection.bank.house", "verdict": "none"},
	"nor the bank's with it": {"design": "meets", "facts": {}, "about": "protection.bank.house", "which": "protection.string.south.a", "verdict": "none"},
	"and is always compared": {"design": "meets", "facts": {}, "about": "protection.string.south.a", "verdict": "none"},
	"a bank's": {"design": "meets", "facts": {}, "about": "protection.bank.house", "verdict": "does_not_apply"},
	"unknown protection.string.south.a.declared.us_2023.pole": {"design": "meets", "facts": {"protection.string.south.a.declared.us_2023.pole": null}, "about": "protection.string.south.a", "which": "protection.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.string.south.a", "which": "protection.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, pv_device_pole.check, c.facts) with input as system
	[x | x := c.verdict; x != "none"] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
