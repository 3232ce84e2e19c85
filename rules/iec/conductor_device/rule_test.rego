package codebooks.iec.conductor_device_test

import data.codebooks.iec.conductor_device
import data.codebooks.iec.shared

# gG below 16 A melts at 1.9 In, up to 4 A at 2.1 In (IEC 60269-1 and -2, from memory).
# Worked: 70 mm2 XLPE on a wall at 30 degC bears 269 A: a 250 A fuse meets, a 300 A one breaks. gG: 1.6 In
# within 1.45 Iz is In up to 0.906 Iz.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"25 mm2 on a wall at 35 degC: exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.rating": "132.48 A"}, "about": "protection.charger.main", "which": "In", "verdict": "meets"},
	"25 mm2 on a wall at 35 degC: a step inside": {"design": "meets", "facts": {"protection.charger.main.rating": "132.34752 A"}, "about": "protection.charger.main", "which": "In", "verdict": "meets"},
	"25 mm2 on a wall at 35 degC: a step beyond": {"design": "meets", "facts": {"protection.charger.main.rating": "132.61248 A"}, "about": "protection.charger.main", "which": "In", "verdict": "breaks"},
	"25 mm2 on a wall at 35 degC: unknown": {"design": "meets", "facts": {"protection.charger.main.rating": null}, "about": "protection.charger.main", "which": "In", "verdict": "unproven"},
	"70 A: exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.rating": "70 A"}, "about": "protection.charger.main", "which": "Ib", "verdict": "meets"},
	"70 A: a step inside": {"design": "meets", "facts": {"protection.charger.main.rating": "70.07 A"}, "about": "protection.charger.main", "which": "Ib", "verdict": "meets"},
	"70 A: a step beyond": {"design": "meets", "facts": {"protection.charger.main.rating": "69.93 A"}, "about": "protection.charger.main", "which": "Ib", "verdict": "breaks"},
	"70 A: unknown": {"design": "meets", "facts": {"protection.charger.main.rating": null}, "about": "protection.charger.main", "which": "Ib", "verdict": "unproven"},
	"gG of 27.1875 A on 30 A: exactly": {"design": "meets", "facts": {"protection.load.lights.rating": "27.1875 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "meets"},
	"gG of 27.2 A on 30 A": {"design": "meets", "facts": {"protection.load.lights.rating": "27.2 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "breaks"},
	"gG of 27.2 A on 30 A: In alone": {"design": "meets", "facts": {"protection.load.lights.rating": "27.2 A"}, "about": "protection.load.lights", "which": "In", "verdict": "meets"},
	"another class": {"design": "meets", "facts": {"protection.load.lights.class": "T"}, "about": "protection.load.lights", "which": "I2", "verdict": "does_not_apply"},
	"class unknown": {"design": "meets", "facts": {"protection.load.lights.class": null}, "about": "protection.load.lights", "which": "I2", "verdict": "unproven"},
	"a breaker": {"design": "meets", "facts": {}, "about": "protection.charger.main", "which": "I2", "verdict": "does_not_apply"},
	"70 mm2 XLPE on a wall at 30 degC, 250 A: 269 A": {"design": "meets", "facts": {"cable_run.bank.house.ambient": "30 degC", "protection.bank.house.rating": "250 A"}, "about": "protection.bank.house", "which": "In", "verdict": "meets"},
	"the same, 300 A": {"design": "meets", "facts": {"cable_run.bank.house.ambient": "30 degC", "protection.bank.house.rating": "300 A"}, "about": "protection.bank.house", "which": "In", "verdict": "breaks"},
	"between batteries": {"design": "meets", "facts": {}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
	"unknown cable_run.charger.main.method of In": {"design": "meets", "facts": {"cable_run.charger.main.method": null}, "about": "protection.charger.main", "which": "In", "verdict": "unproven"},
	"unknown controller.reed-70.charge_current_max of Ib": {"design": "meets", "facts": {"controller.reed-70.charge_current_max": null}, "about": "protection.charger.main", "which": "Ib", "verdict": "unproven"},
	"gG below 16 A melts at 1.9 In: 8.81 A on 11.55 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2", "cable_run.load.lights.ambient": "30 degC", "cable_run.load.lights.declared.iec.single_layer": null, "cable_run.load.lights.grouped": 6, "protection.load.lights.rating": "8.81 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "meets"},
	"gG below 16 A: 8.82 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2", "cable_run.load.lights.ambient": "30 degC", "cable_run.load.lights.declared.iec.single_layer": null, "cable_run.load.lights.grouped": 6, "protection.load.lights.rating": "8.82 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "breaks"},
	"gG of 10 A on 11.55 A: 19 A, 16.7 A allowed": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2", "cable_run.load.lights.ambient": "30 degC", "cable_run.load.lights.declared.iec.single_layer": null, "cable_run.load.lights.grouped": 6, "protection.load.lights.rating": "10 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "breaks"},
	"gG of 4.1 A melts at 1.9 In: 4.78 A on 6.27 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2", "cable_run.load.lights.ambient": "30 degC", "cable_run.load.lights.declared.iec.single_layer": null, "cable_run.load.lights.grouped": 40, "protection.load.lights.rating": "4.78 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "meets"},
	"gG of 4.79 A on 6.27 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2", "cable_run.load.lights.ambient": "30 degC", "cable_run.load.lights.declared.iec.single_layer": null, "cable_run.load.lights.grouped": 40, "protection.load.lights.rating": "4.79 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "breaks"},
	"gG up to 4 A melts at 2.1 In: 3.766 A on 5.45 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2", "cable_run.load.lights.ambient": "40 degC", "cable_run.load.lights.declared.iec.single_layer": null, "cable_run.load.lights.grouped": 40, "protection.load.lights.rating": "3.766 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "meets"},
	"gG up to 4 A: 3.767 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2", "cable_run.load.lights.ambient": "40 degC", "cable_run.load.lights.declared.iec.single_layer": null, "cable_run.load.lights.grouped": 40, "protection.load.lights.rating": "3.767 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "breaks"},
	"gG of exactly 4 A still at 2.1": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2", "cable_run.load.lights.ambient": "40 degC", "cable_run.load.lights.declared.iec.single_layer": null, "cable_run.load.lights.grouped": 40, "protection.load.lights.rating": "4 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "breaks"},
	"gG of 4.02 A at 1.9": {"design": "meets", "facts": {"cable_run.load.lights.size": "1.5 mm2", "cable_run.load.lights.ambient": "40 degC", "cable_run.load.lights.declared.iec.single_layer": null, "cable_run.load.lights.grouped": 40, "protection.load.lights.rating": "4.02 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "meets"},
	"gG of exactly 16 A melts at 1.6 In": {"design": "meets", "facts": {"cable_run.load.lights.grouped": 6, "cable_run.load.lights.ambient": "35 degC", "protection.load.lights.rating": "16 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "meets"},
	"gG of 15.9 A at 1.9": {"design": "meets", "facts": {"cable_run.load.lights.grouped": 6, "cable_run.load.lights.ambient": "35 degC", "protection.load.lights.rating": "15.9 A"}, "about": "protection.load.lights", "which": "I2", "verdict": "breaks"},
	"a breaker of unknown class": {"design": "meets", "facts": {"protection.charger.main.class": null}, "about": "protection.charger.main", "which": "I2", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_device.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Three verdicts, and no word that no conductor lies behind it.
test_verdicts_on_charger if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, conductor_device.check, {}) with input as system
	{"Ib", "In", "I2"} == {object.get(v, "which", "") | some v in verdicts; v.about == "protection.charger.main"}
}

# Without a conductor there is nothing to fit.
test_no_conductor if {
	system := test.facts("meets")
	changed := object.union(system, {"protections": [object.union(p, {"cable_runs": []}) | some p in system.protections]})
	verdicts := test.verdicts(changed, conductor_device.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "protection.charger.main"]
}

# Between batteries another rule judges, whatever conductor lies there.
test_conductor_between_batteries if {
	system := test.facts("meets")
	run := [r | some r in system.cable_runs; r.id == "cable_run.bank.house"]
	changed := object.union(system, {"protections": [object.union(p, {"cable_runs": run}) | some p in system.protections]})
	verdicts := test.verdicts(changed, conductor_device.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "protection.bank.house.each"]
}

# A load that happens to be called each is no link between batteries.
test_load_called_each if not shared.in_each({"id": "protection.load.each"})
