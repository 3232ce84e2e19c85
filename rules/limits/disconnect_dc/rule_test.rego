package codebooks.limits.disconnect_dc_test

import data.codebooks.limits.disconnect_dc

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"disconnect.array.south.dc_rated": true}, "about": "disconnect.array.south", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"disconnect.array.south.dc_rated": false}, "about": "disconnect.array.south", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"disconnect.array.south.dc_rated": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"at the bank: yes": {"design": "meets", "facts": {"disconnect.bank.house.dc_rated": true}, "about": "disconnect.bank.house", "verdict": "meets"},
	"at the bank: no": {"design": "meets", "facts": {"disconnect.bank.house.dc_rated": false}, "about": "disconnect.bank.house", "verdict": "breaks"},
	"at the bank: silent": {"design": "meets", "facts": {"disconnect.bank.house.dc_rated": null}, "about": "disconnect.bank.house", "verdict": "unproven"},
	"on the AC side": {"design": "meets", "facts": {}, "about": "disconnect.load.freezer", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_dc.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
