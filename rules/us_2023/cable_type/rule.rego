# METADATA
# title: Exposed single conductors in arrays are made for it
# description: Sun and heat take other insulation in a few years. In the open single conductors are PV wire, or USE-2 that is RHW-2 too.
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 690.31(C)(1)
#   cites: [nec_2023_memory]
#   remedy: use PV wire, or put the conductors into a raceway
package codebooks.us_2023.cable_type

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": fact.all([shared.on_land(input.site), fact.no(r.indoors), fact.one_of(r.cores, ["single"]), fact.one_of(r.declared.raceway, ["none"]), fact.no(fact.one_of(r.method, ["buried", "direct_buried"]))]),
	"otherwise": "not in the open, not single conductors, or not under this code",
	"is_true": fact.one_of(r.declared.cable_type, ["pv_wire", "use2_rhw2"]), "because": "the conductors are not made for the sun",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "not in a PV circuit"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}
