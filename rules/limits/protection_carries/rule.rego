# METADATA
# title: Fuses and breakers carry their circuit's current
# description: A device near its rating for hours runs hot, ages and opens without a fault. A quarter of spare is usual, unless its maker rates it to carry its rating for ever.
# custom:
#   grade: fix
#   each: protections
#   source: "common practice: 1.25 times the current; a workshop may set another factor"
#   remedy: take the next larger device that the conductor allows
package codebooks.limits.protection_carries

check contains {"about": p.id, "which": "current", "is": p.rating, "at_least": p.current} if some p in input.protections

check contains {
	"about": p.id, "which": "for hours", "when": fact.all([fact.at_least(p.rating, p.current), fact.no(fact.at_least(p.rating, spared(p)))]),
	"otherwise": "its rating has the spare that any device needs, or is too small outright",
	"is_true": p.continuous_rated, "because": "its rating has too little spare to carry this current for hours",
	"also": [p.rating, spared(p)],
} if some p in input.protections

spared(p) := fact.times([input.params.continuous_margin, p.current])
