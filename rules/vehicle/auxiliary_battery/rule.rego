# METADATA
# title: Auxiliary battery large enough
# description: The living area has a battery of its own, of 60 Ah or more.
# custom:
#   grade: fix
#   each: banks
#   source: "EN 1648 auxiliary battery: 60 Ah at 20 h"
#   cites: [en_1648]
#   remedy: use a battery of 60 Ah or more
package codebooks.vehicle.auxiliary_battery

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "when": shared.by_en_1648(input.site), "otherwise": "not built by EN 1648",
	"is": b.capacity, "at_least": fact.number(60, "Ah"),
} if some b in input.banks
