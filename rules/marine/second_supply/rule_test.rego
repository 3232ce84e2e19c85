package codebooks.marine.second_supply_test

import data.codebooks.marine.second_supply

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"another bank": {"design": "meets", "facts": {}, "about": "load.lights", "verdict": "meets"},
	"none": {"design": "meets", "facts": {"load.lights.declared.marine.second_source": false}, "about": "load.lights", "verdict": "breaks"},
	"no safety hangs on it": {"design": "meets", "facts": {"load.lights.declared.marine.critical": false, "load.lights.declared.marine.second_source": false}, "about": "load.lights", "verdict": "does_not_apply"},
	"whether safety hangs on it unknown": {"design": "meets", "facts": {"load.lights.declared.marine.critical": null}, "about": "load.lights", "verdict": "unproven"},
	"silent": {"design": "meets", "facts": {"load.lights.declared.marine.second_source": null}, "about": "load.lights", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm", "load.lights.declared.marine.second_source": false}, "about": "load.lights", "verdict": "does_not_apply"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "load.lights", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "load.lights", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, second_supply.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
