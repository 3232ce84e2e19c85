# METADATA
# title: PV conductors are of a type made for where they lie
# description: "Sun and heat take other insulation in a few years. In the open, on a roof and directly in the earth single conductors are PV wire, or USE-2 that is RHW-2 too. A raceway outside or below ground fills with water: there they are of a type for wet places, which house wiring (NM) is not. A run that lies on a roof and goes inside is both, and judged for both."
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 690.31(A), 690.31(C)(1), 300.5, 300.9, 310.10
#   cites: [nec_2023_memory]
#   remedy: use PV wire; or put the conductors into a raceway, and use THWN-2 or XHHW-2 in it
package codebooks.us_2023.cable_type

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": fact.all([shared.on_land(input.site), fact.one_of(r.cores, ["single"]), bare(r)]),
	"otherwise": "inside, in a raceway or a sheath, not single conductors, or not under this code",
	"is_true": fact.one_of(r.declared.cable_type, ["pv_wire", "use2_rhw2"]), "because": "the conductors are not made for the sun or the earth",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {
	"about": r.id, "which": "in a wet raceway", "when": fact.all([shared.on_land(input.site), fact.one_of(r.cores, ["single"]), wet(r)]),
	"otherwise": "inside, in no raceway, not single conductors, or not under this code",
	"is_true": fact.one_of(r.declared.cable_type, ["pv_wire", "use2_rhw2", "thwn2", "xhhw2"]), "because": "the conductors are not made for the water that stands in such a raceway",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "not in a PV circuit"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}

# With nothing around them: in the open, or directly in the earth.
bare(r) := fact.any([fact.one_of(r.method, ["direct_buried"]), fact.all([outside(r), fact.one_of(r.declared.raceway, ["none"]), fact.no(fact.one_of(r.method, ["buried"]))])])

# In a raceway where water stands.
wet(r) := fact.any([fact.one_of(r.method, ["buried"]), fact.all([outside(r), fact.one_of(r.declared.raceway, ["metal", "nonmetallic"])])])

outside(r) := fact.any([fact.no(r.indoors), r.declared.on_roof])
