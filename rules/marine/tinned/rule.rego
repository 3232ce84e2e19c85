# METADATA
# title: Conductors are tinned
# description: In salt air bare copper turns black under its insulation, and its resistance grows.
# custom:
#   grade: advise
#   each: cable_runs
#   source: common practice aboard
#   remedy: use tinned cable
package codebooks.marine.tinned

import data.codebooks.marine.shared

check contains {
	"about": r.id, "when": shared.boat(input.site), "otherwise": "not a boat",
	"is_true": r.tinned, "because": "its strands are bare copper",
} if some r in input.cable_runs
