package codebooks.iec.battery_air_test

import data.codebooks.iec.battery_air

# Worked (EN 50272-2 and IEC 62485-2): 24 cells, 400 Ah, flooded, 20 mA/Ah: Q = 0.05 x 24 x 20 x 400 / 1000 =
# 9.6 m3/h, 28 x 9.6 = 268.8 cm2. 6 cells, 200 Ah: 1.2 m3/h, 33.6 cm2; AGM 0.48 m3/h, 13.4 cm2.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"12 cells, 450 Ah: 151.2 cm2": {"design": "meets", "facts": {"bank.house.declared.iec.vent_area": "15120 mm2"}, "about": "bank.house", "which": "openings", "verdict": "meets"},
	"12 cells, 450 Ah: a step less": {"design": "meets", "facts": {"bank.house.declared.iec.vent_area": "15119 mm2"}, "about": "bank.house", "which": "openings", "verdict": "breaks"},
	"24 cells, 400 Ah: 268.8 cm2": {"design": "meets", "facts": {"bank.house.cells_in_series": 24, "bank.house.capacity": "400 Ah", "charger.main.absorption_per_cell": "2.4 V", "bank.house.declared.iec.vent_area": "26880 mm2"}, "about": "bank.house", "which": "openings", "verdict": "meets"},
	"24 cells, 400 Ah: a step less": {"design": "meets", "facts": {"bank.house.cells_in_series": 24, "bank.house.capacity": "400 Ah", "charger.main.absorption_per_cell": "2.4 V", "bank.house.declared.iec.vent_area": "26879 mm2"}, "about": "bank.house", "which": "openings", "verdict": "breaks"},
	"6 cells, 200 Ah: 33.6 cm2": {"design": "meets", "facts": {"bank.house.cells_in_series": 6, "bank.house.capacity": "200 Ah", "charge_source.engine.charge_voltage": "14.4 V", "charger.main.absorption_per_cell": "2.4 V", "bank.house.declared.iec.vent_area": "3360 mm2"}, "about": "bank.house", "which": "openings", "verdict": "meets"},
	"6 cells, 200 Ah: a step less": {"design": "meets", "facts": {"bank.house.cells_in_series": 6, "bank.house.capacity": "200 Ah", "charge_source.engine.charge_voltage": "14.4 V", "charger.main.absorption_per_cell": "2.4 V", "bank.house.declared.iec.vent_area": "3359 mm2"}, "about": "bank.house", "which": "openings", "verdict": "breaks"},
	"6 cells, 200 Ah AGM: 13.44 cm2": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "bank.house.cells_in_series": 6, "bank.house.capacity": "200 Ah", "charge_source.engine.charge_voltage": "14.4 V", "charger.main.absorption_per_cell": "2.4 V", "bank.house.declared.iec.vent_area": "1344 mm2"}, "about": "bank.house", "which": "openings", "verdict": "meets"},
	"6 cells, 200 Ah AGM: a step less": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "bank.house.cells_in_series": 6, "bank.house.capacity": "200 Ah", "charge_source.engine.charge_voltage": "14.4 V", "charger.main.absorption_per_cell": "2.4 V", "bank.house.declared.iec.vent_area": "1343 mm2"}, "about": "bank.house", "which": "openings", "verdict": "breaks"},
	"at float alone a quarter": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.23 V", "charge_source.engine.charge_voltage": "26 V", "bank.house.declared.iec.vent_area": "3780 mm2"}, "about": "bank.house", "which": "openings", "verdict": "meets"},
	"a step above the float's row": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.24 V", "charge_source.engine.charge_voltage": "26 V", "bank.house.declared.iec.vent_area": "3780 mm2"}, "about": "bank.house", "which": "openings", "verdict": "breaks"},
	"above 2.40 V a cell the table ends": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.4333 V", "bank.house.declared.iec.gas_current": null}, "about": "bank.house", "which": "openings", "verdict": "unproven"},
	"a step above 2.40 V a cell": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.401 V", "bank.house.declared.iec.gas_current": null}, "about": "bank.house", "which": "openings", "verdict": "unproven"},
	"above 2.40 V a cell, the maker's 4 A for each 100 Ah": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.4333 V", "bank.house.declared.iec.gas_current": "4 A", "bank.house.declared.iec.vent_area": "30240 mm2"}, "about": "bank.house", "which": "openings", "verdict": "meets"},
	"above 2.40 V a cell, a step less": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.4333 V", "bank.house.declared.iec.gas_current": "4 A", "bank.house.declared.iec.vent_area": "30239 mm2"}, "about": "bank.house", "which": "openings", "verdict": "breaks"},
	"a source above 2.40 V a cell": {"design": "meets", "facts": {"charge_source.engine.charge_voltage": "29.2 V", "bank.house.declared.iec.gas_current": null}, "about": "bank.house", "which": "openings", "verdict": "unproven"},
	"equalizing": {"design": "meets", "facts": {"charger.main.settings.equalize": true, "bank.house.declared.iec.gas_current": null}, "about": "bank.house", "which": "openings", "verdict": "unproven"},
	"above 40 degC": {"design": "meets", "facts": {"bank.house.hottest": "40.1 degC", "bank.house.declared.iec.gas_current": null}, "about": "bank.house", "which": "openings", "verdict": "unproven"},
	"exactly 40 degC": {"design": "meets", "facts": {"bank.house.hottest": "40 degC"}, "about": "bank.house", "which": "openings", "verdict": "meets"},
	"a fan: 5.4 m3/h": {"design": "meets", "facts": {"bank.house.declared.iec.ventilation": "forced", "bank.house.declared.iec.forced_air": "5.4 m3/h"}, "about": "bank.house", "which": "fan", "verdict": "meets"},
	"a fan: a step less": {"design": "meets", "facts": {"bank.house.declared.iec.ventilation": "forced", "bank.house.declared.iec.forced_air": "5.39 m3/h"}, "about": "bank.house", "which": "fan", "verdict": "breaks"},
	"24 cells, 400 Ah: a fan of 9.6 m3/h": {"design": "meets", "facts": {"bank.house.cells_in_series": 24, "bank.house.capacity": "400 Ah", "charger.main.absorption_per_cell": "2.4 V", "bank.house.declared.iec.ventilation": "forced", "bank.house.declared.iec.forced_air": "9.6 m3/h"}, "about": "bank.house", "which": "fan", "verdict": "meets"},
	"ventilation silent": {"design": "meets", "facts": {"bank.house.declared.iec.ventilation": null}, "about": "bank.house", "which": "openings", "verdict": "unproven"},
	"lithium": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4"}, "about": "bank.house", "which": "openings", "verdict": "does_not_apply"},
	"unknown battery.bog-12.chemistry of openings": {"design": "meets", "facts": {"battery.bog-12.chemistry": null}, "about": "bank.house", "which": "openings", "verdict": "unproven"},
	"unknown bank.house.declared.iec.vent_area of openings": {"design": "meets", "facts": {"bank.house.declared.iec.vent_area": null}, "about": "bank.house", "which": "openings", "verdict": "unproven"},
	"no fan where air moves by itself": {"design": "meets", "facts": {}, "about": "bank.house", "which": "fan", "verdict": "does_not_apply"},
	"lithium with a fan": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4", "bank.house.declared.iec.ventilation": "forced"}, "about": "bank.house", "which": "fan", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_air.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Two verdicts, and no word that nothing charges it.
test_verdicts_on_house if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, battery_air.check, {}) with input as system
	{"openings", "fan"} == {object.get(v, "which", "") | some v in verdicts; v.about == "bank.house"}
}

# What nothing charges gives off no gas.
test_nothing_charges if {
	system := test.facts("meets")
	changed := object.union(system, {"chargers": [], "charge_sources": []})
	verdicts := test.verdicts(changed, battery_air.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "bank.house"]
}

# What charges another bank brings this one no gas.
test_another_bank_charged if {
	system := test.facts("meets")
	changed := object.union(system, {"chargers": [object.union(c, {"bank": {"id": "bank.other"}}) | some c in system.chargers], "charge_sources": [object.union(e, {"bank": {"id": "bank.other"}}) | some e in system.charge_sources]})
	verdicts := test.verdicts(changed, battery_air.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "bank.house"]
}

# How hard another bank is charged counts for that one alone.
test_another_bank_beyond if {
	system := test.facts("meets")
	other := {"id": "bank.other"}
	high := system.system.pv_voltage_max
	changed := object.union(system, {"chargers": array.concat(system.chargers, [object.union(c, {"id": "charger.other", "bank": other, "absorption_per_cell": high, "settings": object.union(c.settings, {"equalize": system.grounding.frames_bonded})}) | some c in system.chargers]), "charge_sources": array.concat(system.charge_sources, [object.union(e, {"id": "charge_source.other", "bank": other, "charge_voltage": high}) | some e in system.charge_sources])})
	verdicts := test.verdicts(changed, battery_air.check, {"bank.house.declared.iec.gas_current": null}) with input as changed
	{"meets", "does_not_apply"} == {v.verdict | some v in verdicts; v.about == "bank.house"}
}
