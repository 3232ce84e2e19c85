# METADATA
# title: Conductors are stranded copper
# description: A solid conductor breaks where a boat's shaking bends it, at the terminals first.
# custom:
#   grade: fix
#   each: cable_runs
#   source: 33 CFR 183.425, stranded copper; ABYC E-11 11.14
#   cites: [cfr_183, abyc_e11]
#   remedy: use stranded copper, best of class 5
package codebooks.marine.stranded

import data.codebooks.marine.shared

check contains {
	"about": r.id, "when": shared.boat(input.site), "otherwise": "not a boat",
	"is_true": fact.all([fact.one_of(r.material, ["Cu"]), fact.one_of(r.strand, ["class_2", "class_5"])]),
	"because": "it is solid, or not of copper",
} if some r in input.cable_runs
