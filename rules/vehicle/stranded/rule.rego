# METADATA
# title: Conductors are stranded copper
# description: A solid conductor breaks where the road shakes it, at the terminals first.
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 552.10(B) (letter from memory), stranded conductors
#   cites: [nec_552]
#   remedy: use stranded copper
package codebooks.vehicle.stranded

import data.codebooks.vehicle.shared

check contains {
	"about": r.id, "when": shared.by_nec_552(input.site), "otherwise": "not built by NEC article 552",
	"is_true": fact.all([fact.one_of(r.material, ["Cu"]), fact.one_of(r.strand, ["class_2", "class_5"])]), "because": "it is solid, or not of copper",
} if some r in input.cable_runs
