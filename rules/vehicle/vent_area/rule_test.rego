package codebooks.vehicle.vent_area_test

import data.codebooks.vehicle.vent_area

# Worked: 6 cells, 200 Ah: flooded 3360 mm2, AGM 1344 mm2 (IEC 62485-2), where NEC 552 asks for 1100 mm2.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"12 cells, 450 Ah, flooded: exactly at the limit": {"design": "meets", "facts": {"bank.house.declared.vehicle.vent_area": "15120 mm2"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"12 cells, 450 Ah, flooded: a step inside": {"design": "meets", "facts": {"bank.house.declared.vehicle.vent_area": "15135.12 mm2"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"12 cells, 450 Ah, flooded: a step beyond": {"design": "meets", "facts": {"bank.house.declared.vehicle.vent_area": "15104.88 mm2"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "breaks"},
	"12 cells, 450 Ah, flooded: unknown": {"design": "meets", "facts": {"bank.house.declared.vehicle.vent_area": null}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"NEC 552: exactly at the limit": {"design": "meets", "facts": {"site.declared.vehicle.standard": "nec_552", "bank.house.declared.vehicle.vent_area": "1100 mm2"}, "about": "bank.house", "which": "NEC 552", "verdict": "meets"},
	"NEC 552: a step inside": {"design": "meets", "facts": {"site.declared.vehicle.standard": "nec_552", "bank.house.declared.vehicle.vent_area": "1101.1 mm2"}, "about": "bank.house", "which": "NEC 552", "verdict": "meets"},
	"NEC 552: a step beyond": {"design": "meets", "facts": {"site.declared.vehicle.standard": "nec_552", "bank.house.declared.vehicle.vent_area": "1098.9 mm2"}, "about": "bank.house", "which": "NEC 552", "verdict": "breaks"},
	"NEC 552: unknown": {"design": "meets", "facts": {"site.declared.vehicle.standard": "nec_552", "bank.house.declared.vehicle.vent_area": null}, "about": "bank.house", "which": "NEC 552", "verdict": "unproven"},
	"6 cells, 200 Ah: 3360 mm2": {"design": "meets", "facts": {"bank.house.cells_in_series": 6, "bank.house.capacity": "200 Ah", "charger.main.absorption_per_cell": "2.4 V", "charge_source.engine.charge_voltage": "14.4 V", "bank.house.declared.vehicle.vent_area": "3360 mm2"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"6 cells, 200 Ah: 3359 mm2": {"design": "meets", "facts": {"bank.house.cells_in_series": 6, "bank.house.capacity": "200 Ah", "charger.main.absorption_per_cell": "2.4 V", "charge_source.engine.charge_voltage": "14.4 V", "bank.house.declared.vehicle.vent_area": "3359 mm2"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "breaks"},
	"6 cells, 200 Ah AGM: 1344 mm2": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "bank.house.cells_in_series": 6, "bank.house.capacity": "200 Ah", "charger.main.absorption_per_cell": "2.4 V", "charge_source.engine.charge_voltage": "14.4 V", "bank.house.declared.vehicle.vent_area": "1344 mm2"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"6 cells, 200 Ah AGM: 1343 mm2": {"design": "meets", "facts": {"battery.bog-12.chemistry": "agm", "bank.house.cells_in_series": 6, "bank.house.capacity": "200 Ah", "charger.main.absorption_per_cell": "2.4 V", "charge_source.engine.charge_voltage": "14.4 V", "bank.house.declared.vehicle.vent_area": "1343 mm2"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "breaks"},
	"above 2.40 V a cell the maker is asked": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.401 V", "bank.house.declared.vehicle.gas_current": null}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"equalizing, the maker's 4 A for each 100 Ah: 302 cm2": {"design": "meets", "facts": {"charger.main.settings.equalize": true}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "breaks"},
	"lithium": {"design": "meets", "facts": {"battery.bog-12.chemistry": "lifepo4"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "does_not_apply"},
	"not a vehicle (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "does_not_apply"},
	"place unknown (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"another standard (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "does_not_apply"},
	"standard silent (AS/NZS 3001.2)": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "unproven"},
	"equalizing, the maker's 4 A for each 100 Ah: 30240 mm2": {"design": "meets", "facts": {"charger.main.settings.equalize": true, "bank.house.declared.vehicle.vent_area": "30240 mm2"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"equalizing: a step beyond": {"design": "meets", "facts": {"charger.main.settings.equalize": true, "bank.house.declared.vehicle.vent_area": "30230 mm2"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "breaks"},
	"not a vehicle (NEC 552)": {"design": "meets", "facts": {"site.place": "building", "site.declared.vehicle.standard": "nec_552"}, "about": "bank.house", "which": "NEC 552", "verdict": "does_not_apply"},
	"another standard (NEC 552)": {"design": "meets", "facts": {}, "about": "bank.house", "which": "NEC 552", "verdict": "does_not_apply"},
	"lithium (NEC 552)": {"design": "meets", "facts": {"site.declared.vehicle.standard": "nec_552", "battery.bog-12.chemistry": "lifepo4"}, "about": "bank.house", "which": "NEC 552", "verdict": "does_not_apply"},
	"the second bank": {"design": "meets", "facts": {}, "about": "bank.start", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"the second bank, charger of the first at 2.5 V a cell": {"design": "meets", "facts": {"charger.main.absorption_per_cell": "2.5 V"}, "about": "bank.start", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"the second bank, the first equalized": {"design": "meets", "facts": {"charger.main.settings.equalize": true}, "about": "bank.start", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"the first bank, source of the second at 2.5 V a cell": {"design": "meets", "facts": {"charge_source.shore.charge_voltage": "30 V"}, "about": "bank.house", "which": "AS/NZS 3001.2", "verdict": "meets"},
	"the second bank, its own source at 2.5 V a cell": {"design": "meets", "facts": {"charge_source.shore.charge_voltage": "30 V"}, "about": "bank.start", "which": "AS/NZS 3001.2", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, vent_area.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Nothing is said by the formula of a bank that nothing charges.
test_said[about] if {
	some about, owed in {"bank.house": {"AS/NZS 3001.2", "NEC 552"}, "bank.start": {"AS/NZS 3001.2", "NEC 552"}, "bank.spare": {"NEC 552"}}
	system := test.facts("meets")
	verdicts := test.verdicts(system, vent_area.check, {}) with input as system
	owed == {object.get(v, "which", null) | some v in verdicts; v.about == about}
}
