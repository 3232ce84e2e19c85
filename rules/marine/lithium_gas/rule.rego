# METADATA
# title: Gas of a failing lithium cell harms nobody aboard
# description: A cell that fails gives off gas that burns and poisons. It must have a way out that leads past no berth.
# custom:
#   grade: fix
#   each: banks
#   source: ISO 23625, gas of a failing cell
#   cites: [iso_23625]
#   remedy: lead the gas of the battery's compartment outboard
package codebooks.marine.lithium_gas

import data.codebooks.marine.shared

check contains {
	"about": b.id, "when": shared.large_lithium(b), "otherwise": "not a boat, or no lithium bank of the size that the standards speak of",
	"is_true": b.declared.vented, "because": "its gas stays aboard",
} if some b in input.banks
