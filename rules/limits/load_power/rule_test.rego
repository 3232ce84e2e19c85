package codebooks.limits.load_power_test

import data.codebooks.limits.load_power

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"power: exactly at the limit": {"design": "meets", "facts": {"load.pump.power": "1500 W"}, "about": "load.pump", "which": "power", "verdict": "meets"},
	"power: a step below": {"design": "meets", "facts": {"load.pump.power": "1499.85 W"}, "about": "load.pump", "which": "power", "verdict": "meets"},
	"power: a step above": {"design": "meets", "facts": {"load.pump.power": "1500.15 W"}, "about": "load.pump", "which": "power", "verdict": "breaks"},
	"power: unknown": {"design": "meets", "facts": {"load.pump.power": null}, "about": "load.pump", "which": "power", "verdict": "unproven"},
	"surge: exactly at the limit": {"design": "meets", "facts": {"load.pump.surge": "3000 W"}, "about": "load.pump", "which": "surge", "verdict": "meets"},
	"surge: a step below": {"design": "meets", "facts": {"load.pump.surge": "2999.7 W"}, "about": "load.pump", "which": "surge", "verdict": "meets"},
	"surge: a step above": {"design": "meets", "facts": {"load.pump.surge": "3000.3 W"}, "about": "load.pump", "which": "surge", "verdict": "breaks"},
	"surge: unknown": {"design": "meets", "facts": {"load.pump.surge": null}, "about": "load.pump", "which": "surge", "verdict": "unproven"},
	"unknown inverter.sedge-1500.surge": {"design": "meets", "facts": {"inverter.sedge-1500.surge": null}, "about": "load.pump", "which": "surge", "verdict": "unproven"},
	"on the bank": {"design": "meets", "facts": {}, "about": "load.lights", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, load_power.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Power and surge, and no word that the rule does not apply.
test_verdicts_on_pump if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, load_power.check, {}) with input as system
	count([v | some v in verdicts; v.about == "load.pump"]) == 2
}
