package codebooks.limits.polarized_test

import data.codebooks.limits.polarized

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"no": {"design": "meets", "facts": {"protection.charger.main.polarized": false}, "about": "protection.charger.main", "verdict": "meets"},
	"yes": {"design": "meets", "facts": {"protection.charger.main.polarized": true}, "about": "protection.charger.main", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"protection.charger.main.polarized": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"array: no": {"design": "meets", "facts": {"protection.array.south.two_way": true, "protection.array.south.polarized": false}, "about": "protection.array.south", "verdict": "meets"},
	"array: yes": {"design": "meets", "facts": {"protection.array.south.two_way": true, "protection.array.south.polarized": true}, "about": "protection.array.south", "verdict": "breaks"},
	"array: silent": {"design": "meets", "facts": {"protection.array.south.two_way": true, "protection.array.south.polarized": null}, "about": "protection.array.south", "verdict": "unproven"},
	"a fuse": {"design": "meets", "facts": {}, "about": "protection.bank.house", "verdict": "does_not_apply"},
	"a load's": {"design": "meets", "facts": {"protection.load.lights.kind": "breaker", "protection.load.lights.polarized": true}, "about": "protection.load.lights", "verdict": "does_not_apply"},
	"an inverter's: a fuse": {"design": "meets", "facts": {"inverter.sedge-1500.charge_current_max": "50 A"}, "about": "protection.ac_output.cabin", "verdict": "does_not_apply"},
	"an inverter's: not polarized, and its sheet silent on charging": {"design": "meets", "facts": {"protection.ac_output.cabin.kind": "breaker", "protection.ac_output.cabin.polarized": false, "inverter.sedge-1500.charge_current_max": null}, "about": "protection.ac_output.cabin", "verdict": "meets"},
	"an inverter's: polarized, and its sheet silent on charging": {"design": "meets", "facts": {"protection.ac_output.cabin.kind": "breaker", "protection.ac_output.cabin.polarized": true, "inverter.sedge-1500.charge_current_max": null}, "about": "protection.ac_output.cabin", "verdict": "unproven"},
	"an inverter's: polarized, and it only inverts": {"design": "meets", "facts": {"protection.ac_output.cabin.kind": "breaker", "protection.ac_output.cabin.polarized": true, "inverter.sedge-1500.charge_current_max": "0 A"}, "about": "protection.ac_output.cabin", "verdict": "does_not_apply"},
	"an inverter-charger's: polarized": {"design": "meets", "facts": {"protection.ac_output.cabin.kind": "breaker", "protection.ac_output.cabin.polarized": true, "inverter.sedge-1500.charge_current_max": "0.01 A"}, "about": "protection.ac_output.cabin", "verdict": "breaks"},
	"a load's, and its sheet silent: current flows one way": {"design": "meets", "facts": {"protection.load.lights.kind": "breaker", "protection.load.lights.polarized": null}, "about": "protection.load.lights", "verdict": "does_not_apply"},
	"a converter's, and its sheet silent": {"design": "meets", "facts": {"protection.supply.twelve.kind": "breaker", "protection.supply.twelve.polarized": null}, "about": "protection.supply.twelve", "verdict": "does_not_apply"},
	"one way, polarized": {"design": "meets", "facts": {"protection.array.south.two_way": false, "protection.array.south.polarized": true}, "about": "protection.array.south", "verdict": "does_not_apply"},
	"not polarized, whichever way": {"design": "meets", "facts": {"protection.array.south.two_way": null}, "about": "protection.array.south", "verdict": "meets"},
	"polarized, and which way unknown": {"design": "meets", "facts": {"protection.array.south.two_way": null, "protection.array.south.polarized": true}, "about": "protection.array.south", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, polarized.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
