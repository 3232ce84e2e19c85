# METADATA
# title: Batteries fast, covered, and clear of fuel
# description: A battery that breaks loose in a seaway, a spanner across its posts, or fuel that drips on it is how boats burn.
# custom:
#   grade: fix
#   each: banks
#   source: 33 CFR 183.420
#   cites: [cfr_183]
#   remedy: strap the batteries down, cover their terminals, and keep fuel parts away
package codebooks.marine.battery_mounting

import data.codebooks.marine.shared

check contains {"about": b.id, "which": "restrained", "when": shared.boat(input.site), "otherwise": "not a boat", "is_true": b.declared.restrained, "because": "it can move"} if some b in input.banks

check contains {"about": b.id, "which": "terminals", "when": shared.boat(input.site), "otherwise": "not a boat", "is_true": b.declared.terminals_covered, "because": "metal can touch its terminals"} if some b in input.banks

check contains {"about": b.id, "which": "fuel", "when": shared.boat(input.site), "otherwise": "not a boat", "is_true": b.declared.clear_of_fuel, "because": "fuel is above or below it"} if some b in input.banks
