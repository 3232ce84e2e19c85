# METADATA
# title: Conductors from the array are described
# description: "What is not described cannot be judged: neither current nor voltage nor drop."
# custom:
#   grade: fix
#   each: arrays
#   source: common practice
#   remedy: add a cable_run to the array
#   equivalent:
#     - mutant: "1 / 1.01"
#       reason: "what stands there is counted whole: at least 0.99 is at least 1"
package codebooks.limits.array_conductor

check contains {
	"about": a.id, "is": fact.number(count(a.cable_runs), ""), "at_least": fact.number(1, ""),
	"say": "{is} conductors are described from {about} to its charger; {limit} is due.",
} if some a in input.arrays
