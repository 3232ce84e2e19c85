package codebooks.iec.surge_test

import data.codebooks.iec.surge

# Worked: 2.5 flashes for each square kilometer and year: 115 / 2.5 = 46 m for a dwelling, 80 m on the
# ground, 180 m for other buildings.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly the critical length, fitted": {"design": "meets", "facts": {}, "about": "pv_input.main.1", "verdict": "meets"},
	"exactly the critical length, not fitted": {"design": "meets", "facts": {"grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "breaks"},
	"a step shorter, not fitted": {"design": "meets", "facts": {"cable_run.array.south.length": "11.99 m", "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "meets"},
	"silent, long": {"design": "meets", "facts": {"grounding.surge_protection": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"silent, short": {"design": "meets", "facts": {"grounding.surge_protection": null, "cable_run.array.south.length": "11.99 m"}, "about": "pv_input.main.1", "verdict": "meets"},
	"fitted, critical length unknown": {"design": "meets", "facts": {"site.declared.iec.critical_length": null}, "about": "pv_input.main.1", "verdict": "meets"},
	"not fitted, critical length unknown": {"design": "meets", "facts": {"site.declared.iec.critical_length": null, "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "unproven"},
	"2.5 flashes, dwelling: 46 m, not fitted": {"design": "meets", "facts": {"site.declared.iec.critical_length": "46 m", "cable_run.array.south.length": "40 m", "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "breaks"},
	"2.5 flashes, other building: 180 m, not fitted": {"design": "meets", "facts": {"site.declared.iec.critical_length": "180 m", "cable_run.array.south.length": "40 m", "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "meets"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat", "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "pv_input.main.1", "verdict": "unproven"},
	"not fitted, length unknown": {"design": "meets", "facts": {"cable_run.array.south.length": null, "grounding.surge_protection": false}, "about": "pv_input.main.1", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, surge.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
