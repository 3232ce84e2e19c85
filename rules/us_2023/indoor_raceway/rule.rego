# METADATA
# title: PV circuits inside buildings run in metal
# description: An arc inside a wall is not seen. Above 30 V or 8 A PV conductors in a building run in a metal raceway, metal-clad cable or metal enclosures; a listed hazard control system is excepted.
# custom:
#   grade: stop
#   each: cable_runs
#   source: NEC 2023 690.31(D), 690.8(A)(1)
#   cites: [nec_2023]
#   remedy: use a metal raceway or metal-clad cable inside the building
package codebooks.us_2023.indoor_raceway

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": fact.all([shared.on_land(input.site), r.indoors, large(r), fact.no(fact.all([a.declared.hazard_control | some a in arrays(r)]))]),
	"otherwise": "not inside a building, not above 30 V or 8 A, a listed hazard control system, or not under this code",
	"is_true": fact.one_of(r.declared.raceway, ["metal", "mc_cable"]), "because": "the conductors do not run in metal",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "not in a PV circuit"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}

large(r) := fact.any([
	fact.more_than(shared.circuit_voltage(r, input.strings), fact.number(30, "V")),
	fact.more_than(shared.maximum_current(r), fact.number(8, "A")),
])

arrays(r) := array.concat(r.arrays, [s.array | some s in r.strings])
