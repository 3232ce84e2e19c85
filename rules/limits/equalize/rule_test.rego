package codebooks.limits.equalize_test

import data.codebooks.limits.equalize

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"lithium: no": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4", "charger.main.settings.equalize": false}, "about": "charger.main", "which": "chemistry", "verdict": "meets"},
	"lithium: yes": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4", "charger.main.settings.equalize": true}, "about": "charger.main", "which": "chemistry", "verdict": "breaks"},
	"lithium: silent": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4", "charger.main.settings.equalize": null}, "about": "charger.main", "which": "chemistry", "verdict": "unproven"},
	"gel": {"design": "meets", "facts": {"battery.bog-12.chemistry": "gel", "charger.main.settings.equalize": true}, "about": "charger.main", "which": "chemistry", "verdict": "breaks"},
	"flooded": {"design": "meets", "facts": {"battery.bog-12.chemistry": "flooded"}, "about": "charger.main", "which": "chemistry", "verdict": "does_not_apply"},
	"unknown battery.bog-12.chemistry": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "charger.main", "which": "chemistry", "verdict": "unproven"},
	"flooded: exactly at the limit": {"design": "meets", "facts": {"charger.main.equalize_per_battery": "31 V", "battery.bog-12.chemistry": "flooded", "charger.main.settings.equalize": true, "battery.bog-12.equalize_max": "31 V"}, "about": "charger.main", "which": "voltage", "verdict": "meets"},
	"flooded: a step below": {"design": "meets", "facts": {"charger.main.equalize_per_battery": "30.9969 V", "battery.bog-12.chemistry": "flooded", "charger.main.settings.equalize": true, "battery.bog-12.equalize_max": "31 V"}, "about": "charger.main", "which": "voltage", "verdict": "meets"},
	"flooded: a step above": {"design": "meets", "facts": {"charger.main.equalize_per_battery": "31.0031 V", "battery.bog-12.chemistry": "flooded", "charger.main.settings.equalize": true, "battery.bog-12.equalize_max": "31 V"}, "about": "charger.main", "which": "voltage", "verdict": "breaks"},
	"flooded: unknown": {"design": "meets", "facts": {"charger.main.equalize_per_battery": null, "battery.bog-12.chemistry": "flooded", "charger.main.settings.equalize": true, "battery.bog-12.equalize_max": "31 V"}, "about": "charger.main", "which": "voltage", "verdict": "unproven"},
	"AGM, and the sheet is silent on equalizing": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "charger.main.settings.equalize": true, "charger.main.equalize_per_battery": "31 V", "battery.bog-12.equalize_max": null}, "about": "charger.main", "which": "voltage", "verdict": "unproven"},
	"flooded, not equalized": {"design": "meets", "facts": {"charger.main.settings.equalize": false}, "about": "charger.main", "which": "voltage", "verdict": "does_not_apply"},
	"gel is no matter of voltage": {"design": "meets", "facts": {"battery.bog-12.chemistry": "gel", "charger.main.settings.equalize": true}, "about": "charger.main", "which": "voltage", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, equalize.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
