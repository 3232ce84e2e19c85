package codebooks.vehicle.stranded_test

import data.codebooks.vehicle.stranded

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"class 5": {"design": "meets", "facts": {}, "about": "cable_run.load.lights", "verdict": "meets"},
	"solid": {"design": "meets", "facts": {"cable_run.load.lights.strand": "solid"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"aluminum": {"design": "meets", "facts": {"cable_run.load.lights.material": "Al"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.load.lights.strand": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"by another standard, solid": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv", "cable_run.load.lights.strand": "solid"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"on the AC side, solid": {"design": "meets", "facts": {}, "about": "cable_run.load.socket", "verdict": "does_not_apply"},
	"standard silent": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "cable_run.load.lights", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, stranded.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
