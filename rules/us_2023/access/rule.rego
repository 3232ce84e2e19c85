# METADATA
# title: Live PV conductors are out of reach, or enclosed
# description: Above 30 V what anybody can touch is guarded, in a raceway or in metal-clad cable.
# custom:
#   grade: stop
#   each: cable_runs
#   source: NEC 2023 690.31(A)
#   cites: [nec_2023]
#   remedy: put the conductors into a raceway, or out of reach
package codebooks.us_2023.access

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": fact.all([shared.on_land(input.site), fact.more_than(shared.circuit_voltage(r, input.strings), fact.number(30, "V"))]),
	"otherwise": "never above 30 V, or not under this code",
	"is_true": fact.any([fact.no(r.declared.readily_accessible), fact.one_of(r.declared.raceway, ["metal", "mc_cable", "nonmetallic"]), fact.one_of(r.method, ["buried", "direct_buried"])]),
	"because": "anybody can touch conductors of more than 30 V that nothing encloses",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "not in a PV circuit"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}
