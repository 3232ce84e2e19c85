package codebooks.limits.protection_dc_test

import data.codebooks.limits.protection_dc

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"protection.array.south.dc_rated": true}, "about": "protection.array.south", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"protection.array.south.dc_rated": false}, "about": "protection.array.south", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"protection.array.south.dc_rated": null}, "about": "protection.array.south", "verdict": "unproven"},
	"at the bank: yes": {"design": "meets", "facts": {"protection.bank.house.dc_rated": true}, "about": "protection.bank.house", "verdict": "meets"},
	"at the bank: no": {"design": "meets", "facts": {"protection.bank.house.dc_rated": false}, "about": "protection.bank.house", "verdict": "breaks"},
	"at the bank: silent": {"design": "meets", "facts": {"protection.bank.house.dc_rated": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"on the AC side": {"design": "meets", "facts": {}, "about": "protection.load.freezer", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, protection_dc.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
