# METADATA
# title: Nothing that sparks near a battery's vents
# description: Close to the vents the gas is not yet thinned. The distance within which nothing may spark or glow grows with the cube root of the gas.
# custom:
#   grade: fix
#   each: banks
#   source: "IEC 62485-2 7.7: d = 28.8 x cube root of Igas x C, mm (from memory)"
#   cites: [iec_62485_2_memory, iec_62485_2]
#   remedy: move fuses, switches and controllers away, or put a wall between
package codebooks.iec.spark_distance

import data.codebooks.iec.shared

# Compared by their cubes: the rule language has no roots.
check contains {
	"about": b.id, "when": shared.lead(b), "otherwise": "no lead bank",
	"is": cube(fact.ratio(b.declared.spark_distance, fact.number(1, "mm"))),
	"at_least": fact.times([cube(fact.number(28.8, "")), shared.gas(b), fact.ratio(b.capacity, fact.number(1, "Ah"))]),
	"say": "What sparks stands too near the vents of {about}: the cube of the distance in mm is {is}, and {limit} is due, of which the cube root is the distance.",
} if {
	some b in input.banks
	count(shared.sources(b)) > 0
}

check contains {"about": b.id, "does_not_apply": "nothing charges it"} if {
	some b in input.banks
	count(shared.sources(b)) == 0
}

cube(x) := fact.times([x, x, x])
