package codebooks.vehicle.lead_vented_test

import data.codebooks.vehicle.lead_vented

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"vented: yes": {"design": "meets", "facts": {}, "about": "bank.house", "which": "vented", "verdict": "meets"},
	"vented: no": {"design": "meets", "facts": {"bank.house.declared.vehicle.vented_outside": false}, "about": "bank.house", "which": "vented", "verdict": "breaks"},
	"vented: silent": {"design": "meets", "facts": {"bank.house.declared.vehicle.vented_outside": null}, "about": "bank.house", "which": "vented", "verdict": "unproven"},
	"vented: lithium": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4", "bank.house.declared.vehicle.vented_outside": false}, "about": "bank.house", "which": "vented", "verdict": "does_not_apply"},
	"vented: AGM": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "bank.house.declared.vehicle.vented_outside": false}, "about": "bank.house", "which": "vented", "verdict": "breaks"},
	"unknown battery.bog-12.chemistry of vented": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "bank.house", "which": "vented", "verdict": "unproven"},
	"not a vehicle (vented)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "vented", "verdict": "does_not_apply"},
	"place unknown (vented)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "vented", "verdict": "unproven"},
	"sealed: yes": {"design": "meets", "facts": {}, "about": "bank.house", "which": "sealed", "verdict": "meets"},
	"sealed: no": {"design": "meets", "facts": {"bank.house.declared.vehicle.sealed_from_cabin": false}, "about": "bank.house", "which": "sealed", "verdict": "breaks"},
	"sealed: silent": {"design": "meets", "facts": {"bank.house.declared.vehicle.sealed_from_cabin": null}, "about": "bank.house", "which": "sealed", "verdict": "unproven"},
	"sealed: lithium": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4", "bank.house.declared.vehicle.sealed_from_cabin": false}, "about": "bank.house", "which": "sealed", "verdict": "does_not_apply"},
	"sealed: AGM": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "bank.house.declared.vehicle.sealed_from_cabin": false}, "about": "bank.house", "which": "sealed", "verdict": "breaks"},
	"unknown battery.bog-12.chemistry of sealed": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "bank.house", "which": "sealed", "verdict": "unproven"},
	"not a vehicle (sealed)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "sealed", "verdict": "does_not_apply"},
	"place unknown (sealed)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "sealed", "verdict": "unproven"},
	"sparks: yes": {"design": "meets", "facts": {}, "about": "bank.house", "which": "sparks", "verdict": "meets"},
	"sparks: no": {"design": "meets", "facts": {"bank.house.declared.vehicle.spark_free": false}, "about": "bank.house", "which": "sparks", "verdict": "breaks"},
	"sparks: silent": {"design": "meets", "facts": {"bank.house.declared.vehicle.spark_free": null}, "about": "bank.house", "which": "sparks", "verdict": "unproven"},
	"sparks: lithium": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4", "bank.house.declared.vehicle.spark_free": false}, "about": "bank.house", "which": "sparks", "verdict": "does_not_apply"},
	"sparks: AGM": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "bank.house.declared.vehicle.spark_free": false}, "about": "bank.house", "which": "sparks", "verdict": "breaks"},
	"unknown battery.bog-12.chemistry of sparks": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "bank.house", "which": "sparks", "verdict": "unproven"},
	"not a vehicle (sparks)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "sparks", "verdict": "does_not_apply"},
	"place unknown (sparks)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "sparks", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, lead_vented.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
