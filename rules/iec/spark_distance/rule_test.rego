package codebooks.iec.spark_distance_test

import data.codebooks.iec.spark_distance

# Worked: 20 mA/Ah and 400 Ah: 28.8 x 20 = 576 mm; AGM, 200 Ah: 28.8 x 11.696 = 336.8 mm.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"24 cells, 400 Ah: 576 mm": {"design": "meets", "facts": {"bank.house.capacity": "400 Ah", "bank.house.declared.iec.spark_distance": "0.576 m"}, "about": "bank.house", "verdict": "meets"},
	"a step less": {"design": "meets", "facts": {"bank.house.capacity": "400 Ah", "bank.house.declared.iec.spark_distance": "0.5759 m"}, "about": "bank.house", "verdict": "breaks"},
	"200 Ah AGM: 337 mm": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "bank.house.capacity": "200 Ah", "bank.house.declared.iec.spark_distance": "0.3369 m"}, "about": "bank.house", "verdict": "meets"},
	"200 Ah AGM: 336 mm": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "bank.house.capacity": "200 Ah", "bank.house.declared.iec.spark_distance": "0.336 m"}, "about": "bank.house", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"bank.house.declared.iec.spark_distance": null}, "about": "bank.house", "verdict": "unproven"},
	"lithium": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, spark_distance.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# What nothing charges gives off no gas.
test_nothing_charges if {
	system := test.facts("meets")
	changed := object.union(system, {"chargers": [], "charge_sources": []})
	verdicts := test.verdicts(changed, spark_distance.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "bank.house"]
}
