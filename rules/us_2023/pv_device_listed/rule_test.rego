package codebooks.us_2023.pv_device_listed_test

import data.codebooks.us_2023.pv_device_listed

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"a gPV fuse": {"design": "meets", "facts": {"protection.string.south.a.declared.us_2023.pv_listed": null}, "about": "protection.string.south.a", "verdict": "meets"},
	"another fuse": {"design": "meets", "facts": {"protection.string.south.a.class": "gG", "protection.string.south.a.declared.us_2023.pv_listed": false}, "about": "protection.string.south.a", "verdict": "breaks"},
	"another fuse so listed": {"design": "meets", "facts": {"protection.string.south.a.class": "gG", "protection.string.south.a.declared.us_2023.pv_listed": true}, "about": "protection.string.south.a", "verdict": "meets"},
	"another fuse, silent": {"design": "meets", "facts": {"protection.string.south.a.class": "gG", "protection.string.south.a.declared.us_2023.pv_listed": null}, "about": "protection.string.south.a", "verdict": "unproven"},
	"a breaker not so listed": {"design": "meets", "facts": {"protection.array.south.declared.us_2023.pv_listed": false}, "about": "protection.array.south", "verdict": "breaks"},
	"a bank's fuse": {"design": "meets", "facts": {}, "about": "protection.bank.house", "verdict": "does_not_apply"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.string.south.a", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, pv_device_listed.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
