package codebooks.vehicle.conductor_heat_test

import data.codebooks.vehicle.conductor_heat

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly 10 K above the air": {"design": "meets", "facts": {"cable_run.bank.house.ambient": "95 degC"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"a step cooler": {"design": "meets", "facts": {"cable_run.bank.house.ambient": "94.95 degC"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"a step hotter": {"design": "meets", "facts": {"cable_run.bank.house.ambient": "95.05 degC"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"70 degC in an engine bay of 65 degC, whatever its maker's ampacity": {"design": "meets", "facts": {"cable_run.bank.house.insulation": "70 degC", "cable_run.bank.house.ambient": "65 degC", "cable_run.bank.house.ampacity": "400 A"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"insulation silent": {"design": "meets", "facts": {"cable_run.bank.house.insulation": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
	"air silent": {"design": "meets", "facts": {"cable_run.bank.house.ambient": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_heat.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
