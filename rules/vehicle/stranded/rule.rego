# METADATA
# title: Conductors are stranded copper
# description: A solid conductor breaks where the road shakes it, at the terminals first.
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 552.10(B) (letter from memory), stranded conductors; in other vehicles common practice
#   cites: [nec_552]
#   remedy: use stranded copper
package codebooks.vehicle.stranded

import data.codebooks.vehicle.shared

check contains {
	"about": r.id, "when": shared.vehicle(input.site), "otherwise": "not a vehicle",
	"is_true": fact.all([fact.one_of(r.material, ["Cu"]), fact.one_of(r.strand, ["class_2", "class_5"])]), "because": "it is solid, or not of copper",
} if {
	some r in input.cable_runs
	not shared.on_ac(r)
}

check contains {"about": r.id, "does_not_apply": "on the AC side"} if {
	some r in input.cable_runs
	shared.on_ac(r)
}
