package codebooks.limits.inverter_low_voltage_test

import data.codebooks.limits.inverter_low_voltage

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"own: exactly at the limit": {"design": "meets", "facts": {"ac_output.cabin.low_cutoff": "20 V"}, "about": "ac_output.cabin", "which": "inverter's own", "verdict": "meets"},
	"own: a step above": {"design": "meets", "facts": {"ac_output.cabin.low_cutoff": "20.002 V"}, "about": "ac_output.cabin", "which": "inverter's own", "verdict": "meets"},
	"own: a step below": {"design": "meets", "facts": {"ac_output.cabin.low_cutoff": "19.998 V"}, "about": "ac_output.cabin", "which": "inverter's own", "verdict": "breaks"},
	"own: unknown": {"design": "meets", "facts": {"ac_output.cabin.low_cutoff": null}, "about": "ac_output.cabin", "which": "inverter's own", "verdict": "unproven"},
	"floor: exactly at the limit": {"design": "meets", "facts": {"ac_output.cabin.low_cutoff": "22 V"}, "about": "ac_output.cabin", "which": "battery's floor", "verdict": "meets"},
	"floor: a step above": {"design": "meets", "facts": {"ac_output.cabin.low_cutoff": "22.0022 V"}, "about": "ac_output.cabin", "which": "battery's floor", "verdict": "meets"},
	"floor: a step below": {"design": "meets", "facts": {"ac_output.cabin.low_cutoff": "21.9978 V"}, "about": "ac_output.cabin", "which": "battery's floor", "verdict": "breaks"},
	"floor: unknown": {"design": "meets", "facts": {"ac_output.cabin.low_cutoff": null}, "about": "ac_output.cabin", "which": "battery's floor", "verdict": "unproven"},
	"unknown inverter.sedge-1500.dc_min": {"design": "meets", "facts": {"inverter.sedge-1500.dc_min": null}, "about": "ac_output.cabin", "which": "inverter's own", "verdict": "unproven"},
	"unknown battery.peat-100.discharge_voltage_min": {"design": "meets", "facts": {"battery.peat-100.discharge_voltage_min": null}, "about": "ac_output.cabin", "which": "battery's floor", "verdict": "unproven"},
	"own: not what the inverter falls to by itself": {"design": "meets", "facts": {"ac_output.cabin.low_cutoff": "19 V", "ac_output.cabin.voltage_lowest": "30 V"}, "about": "ac_output.cabin", "which": "inverter's own", "verdict": "breaks"},
	"floor: not what the inverter falls to by itself": {"design": "meets", "facts": {"ac_output.cabin.low_cutoff": "19 V", "ac_output.cabin.voltage_lowest": "30 V"}, "about": "ac_output.cabin", "which": "battery's floor", "verdict": "breaks"},
	"floor: two batteries in series": {"design": "meets", "facts": {"bank.house.series": 2, "ac_output.cabin.low_cutoff": "43.9 V"}, "about": "ac_output.cabin", "which": "battery's floor", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, inverter_low_voltage.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
