package codebooks.limits.usual_voltages_test

import data.codebooks.limits.usual_voltages

# Per 12 V (six lead or four iron-phosphate cells), common practice: flooded 14.4 to 14.8 V, float to
# 13.5, equalize 15.5; AGM to 14.7, float to 13.8; gel to 14.4, float 13.5; iron phosphate 14.2 to
# 14.4 V, float to 13.6. 2.40 V a cell is 14.4 V on six.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"flooded: exactly at the limit": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.46666666667 V"}, "about": "charger.main", "which": "absorption", "verdict": "meets"},
	"flooded: a step below": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.46642 V"}, "about": "charger.main", "which": "absorption", "verdict": "meets"},
	"flooded: a step above": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.46691333334 V"}, "about": "charger.main", "which": "absorption", "verdict": "breaks"},
	"flooded: unknown": {"design": "meets", "facts": {"charger.main.absorption_per_cell": null}, "about": "charger.main", "which": "absorption", "verdict": "unproven"},
	"flooded float: exactly at the limit": {"design": "meets", "facts": {"charger.main.float_per_cell": "2.25 V"}, "about": "charger.main", "which": "float", "verdict": "meets"},
	"flooded float: a step below": {"design": "meets", "facts": {"charger.main.float_per_cell": "2.249775 V"}, "about": "charger.main", "which": "float", "verdict": "meets"},
	"flooded float: a step above": {"design": "meets", "facts": {"charger.main.float_per_cell": "2.250225 V"}, "about": "charger.main", "which": "float", "verdict": "breaks"},
	"flooded float: unknown": {"design": "meets", "facts": {"charger.main.float_per_cell": null}, "about": "charger.main", "which": "float", "verdict": "unproven"},
	"equalizing: exactly at the limit": {"design": "meets", "facts": {"charger.main.equalize_per_cell": "2.5834 V"}, "about": "charger.main", "which": "equalizing", "verdict": "meets"},
	"equalizing: a step below": {"design": "meets", "facts": {"charger.main.equalize_per_cell": "2.58314166 V"}, "about": "charger.main", "which": "equalizing", "verdict": "meets"},
	"equalizing: a step above": {"design": "meets", "facts": {"charger.main.equalize_per_cell": "2.58365834 V"}, "about": "charger.main", "which": "equalizing", "verdict": "breaks"},
	"equalizing: unknown": {"design": "meets", "facts": {"charger.main.equalize_per_cell": null}, "about": "charger.main", "which": "equalizing", "verdict": "unproven"},
	"flooded at 2.40 V": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.40 V"}, "about": "charger.main", "which": "absorption", "verdict": "meets"},
	"gel at 2.40 V": {"design": "meets", "facts": {"battery.bog-12.chemistry": "gel", "charger.main.absorption_per_cell": "2.40 V"}, "about": "charger.main", "which": "absorption", "verdict": "meets"},
	"gel at 2.45 V": {"design": "meets", "facts": {"battery.bog-12.chemistry": "gel", "charger.main.absorption_per_cell": "2.45 V"}, "about": "charger.main", "which": "absorption", "verdict": "breaks"},
	"AGM at 2.45 V": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "charger.main.absorption_per_cell": "2.45 V"}, "about": "charger.main", "which": "absorption", "verdict": "meets"},
	"iron phosphate at 3.60 V": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4", "charger.main.absorption_per_cell": "3.6 V"}, "about": "charger.main", "which": "absorption", "verdict": "meets"},
	"iron phosphate at 3.65 V": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4", "charger.main.absorption_per_cell": "3.65 V"}, "about": "charger.main", "which": "absorption", "verdict": "breaks"},
	"iron phosphate floated at 3.40 V": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4", "charger.main.float_per_cell": "3.4 V"}, "about": "charger.main", "which": "float", "verdict": "meets"},
	"unknown battery.bog-12.chemistry": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "charger.main", "which": "absorption", "verdict": "unproven"},
	"nmc has no usual float": {"design": "meets", "facts": {"battery.bog-12.chemistry": "nmc"}, "about": "charger.main", "which": "float", "verdict": "does_not_apply"},
	"not equalized": {"design": "meets", "facts": {"charger.main.settings.equalize": false}, "about": "charger.main", "which": "equalizing", "verdict": "does_not_apply"},
	"gel is not equalized": {"design": "meets", "facts": {"battery.bog-12.chemistry": "gel", "charger.main.settings.equalize": true}, "about": "charger.main", "which": "equalizing", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, usual_voltages.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
