package codebooks.us_2023.bank_disconnect_test

import data.codebooks.us_2023.bank_disconnect

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"with a switch": {"design": "meets", "facts": {}, "about": "bank.house", "which": "switch", "verdict": "meets"},
	"without": {"design": "breaks", "facts": {}, "about": "bank.house", "which": "switch", "verdict": "breaks"},
	"without, and a breaker in the main": {"design": "breaks", "facts": {"protection.bank.house.kind": "breaker", "protection.bank.house.polarized": false}, "about": "bank.house", "which": "switch", "verdict": "meets"},
	"without, and a breaker of one direction": {"design": "breaks", "facts": {"protection.bank.house.kind": "breaker", "protection.bank.house.polarized": true}, "about": "bank.house", "which": "switch", "verdict": "breaks"},
	"without, and a breaker, polarized or not unknown": {"design": "breaks", "facts": {"protection.bank.house.kind": "breaker"}, "about": "bank.house", "which": "switch", "verdict": "unproven"},
	"without, and a fuse that the word polarized stands beside": {"design": "breaks", "facts": {"protection.bank.house.polarized": false}, "about": "bank.house", "which": "switch", "verdict": "breaks"},
	"without, and a breaker for each battery": {"design": "breaks", "facts": {"protection.bank.house.each.kind": "breaker", "protection.bank.house.each.polarized": false}, "about": "bank.house", "which": "switch", "verdict": "breaks"},
	"51.2 V": {"design": "meets", "facts": {"bank.house.declared.us_2023.in_sight_disconnect": false}, "about": "bank.house", "which": "in sight", "verdict": "does_not_apply"},
	"51.2 V through a wall, out of sight": {"design": "meets", "facts": {"cable_run.bank.house.declared.us_2023.through_wall": true, "bank.house.declared.us_2023.in_sight_disconnect": false}, "about": "bank.house", "which": "in sight", "verdict": "breaks"},
	"51.2 V, walls unknown": {"design": "meets", "facts": {"cable_run.bank.house.declared.us_2023.through_wall": null}, "about": "bank.house", "which": "in sight", "verdict": "unproven"},
	"above 60 V on a boat": {"design": "meets", "facts": {"site.place": "boat", "bank.house.nominal": "60.1 V", "bank.house.declared.us_2023.in_sight_disconnect": false}, "about": "bank.house", "which": "in sight", "verdict": "does_not_apply"},
	"exactly 60 V": {"design": "meets", "facts": {"bank.house.nominal": "60 V", "bank.house.declared.us_2023.in_sight_disconnect": false}, "about": "bank.house", "which": "in sight", "verdict": "does_not_apply"},
	"above 60 V, out of sight": {"design": "meets", "facts": {"bank.house.nominal": "60.1 V", "bank.house.declared.us_2023.in_sight_disconnect": false}, "about": "bank.house", "which": "in sight", "verdict": "breaks"},
	"above 60 V, in sight": {"design": "meets", "facts": {"bank.house.nominal": "60.1 V"}, "about": "bank.house", "which": "in sight", "verdict": "meets"},
	"above 60 V, silent": {"design": "meets", "facts": {"bank.house.nominal": "60.1 V", "bank.house.declared.us_2023.in_sight_disconnect": null}, "about": "bank.house", "which": "in sight", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "bank.house", "which": "switch", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_disconnect.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
