package codebooks.datasheet.battery_currents_test

import data.codebooks.datasheet.battery_currents

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"charge: exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.charge_current_max": "80 A"}, "about": "battery.peat-100", "which": "charge", "verdict": "meets"},
	"charge: a step below": {"design": "meets", "facts": {"battery.peat-100.charge_current_max": "79.992 A"}, "about": "battery.peat-100", "which": "charge", "verdict": "meets"},
	"charge: a step above": {"design": "meets", "facts": {"battery.peat-100.charge_current_max": "80.008 A"}, "about": "battery.peat-100", "which": "charge", "verdict": "breaks"},
	"charge: unknown": {"design": "meets", "facts": {"battery.peat-100.charge_current_max": null}, "about": "battery.peat-100", "which": "charge", "verdict": "unproven"},
	"discharge: exactly at the limit": {"design": "meets", "facts": {"battery.peat-100.discharge_current_max": "120 A"}, "about": "battery.peat-100", "which": "discharge", "verdict": "meets"},
	"discharge: a step below": {"design": "meets", "facts": {"battery.peat-100.discharge_current_max": "119.988 A"}, "about": "battery.peat-100", "which": "discharge", "verdict": "meets"},
	"discharge: a step above": {"design": "meets", "facts": {"battery.peat-100.discharge_current_max": "120.012 A"}, "about": "battery.peat-100", "which": "discharge", "verdict": "breaks"},
	"discharge: unknown": {"design": "meets", "facts": {"battery.peat-100.discharge_current_max": null}, "about": "battery.peat-100", "which": "discharge", "verdict": "unproven"},
	"unknown battery.peat-100.bms.charge_cutoff": {"design": "meets", "facts": {"battery.peat-100.bms.charge_cutoff": null}, "about": "battery.peat-100", "which": "charge", "verdict": "unproven"},
	"unknown battery.peat-100.bms.discharge_cutoff": {"design": "meets", "facts": {"battery.peat-100.bms.discharge_cutoff": null}, "about": "battery.peat-100", "which": "discharge", "verdict": "unproven"},
	"lead, charge": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "battery.peat-100", "which": "charge", "verdict": "does_not_apply"},
	"lead, discharge": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "battery.peat-100", "which": "discharge", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_currents.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
