package codebooks.us_2023.source_capacity_test

import data.codebooks.us_2023.source_capacity

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"load.pump.power": "2400 W"}, "about": "ac_output.shop", "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"load.pump.power": "2399.76 W"}, "about": "ac_output.shop", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"load.pump.power": "2400.24 W"}, "about": "ac_output.shop", "verdict": "breaks"},
	"unknown load.pump.power": {"design": "meets", "facts": {"load.pump.power": null}, "about": "ac_output.shop", "verdict": "unproven"},
	"unknown inverter.basin-2400.continuous": {"design": "meets", "facts": {"inverter.basin-2400.continuous": null}, "about": "ac_output.shop", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "ac_output.shop", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, source_capacity.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# A load of another inverter is not this one's.
test_load_of_another if {
	system := test.facts("meets")
	apart := object.union(system, {"loads": [object.union(l, {"ac_outputs": [object.union(x, {"id": "ac_output.barn"}) | some x in l.ac_outputs]}) | some l in system.loads]})
	verdicts := test.verdicts(apart, source_capacity.check, {"load.pump.power": "3 kW"}) with input as apart
	["meets"] == [v.verdict | some v in verdicts; v.about == "ac_output.shop"]
}
