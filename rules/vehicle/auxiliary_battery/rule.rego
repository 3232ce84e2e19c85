# METADATA
# title: Auxiliary battery large enough and fast in its place
# description: The living area has a battery of its own, of 60 Ah or more, which stays where it is in a crash.
# custom:
#   grade: fix
#   each: banks
#   source: "EN 1648 auxiliary battery: 60 Ah at 20 h; fastening from memory"
#   cites: [en_1648, en_1648_memory]
#   remedy: use a battery of 60 Ah or more, and strap it down
package codebooks.vehicle.auxiliary_battery

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "which": "capacity", "when": shared.by_en_1648(input.site), "otherwise": "not built by EN 1648",
	"is": b.capacity, "at_least": fact.number(60, "Ah"),
} if some b in input.banks

check contains {
	"about": b.id, "which": "restrained", "when": shared.by_en_1648(input.site), "otherwise": "not built by EN 1648",
	"is_true": b.declared.restrained, "because": "it is not fastened",
} if some b in input.banks
