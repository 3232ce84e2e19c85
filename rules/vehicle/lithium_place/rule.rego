# METADATA
# title: Lithium batteries never vent into the cabin
# description: A cell that fails gives off gas that burns and poisons. Inside a vehicle it must have a way out that is closed toward the cabin.
# custom:
#   grade: fix
#   each: banks
#   source: AS/NZS 3001.2 lithium batteries (place from memory)
#   cites: [as_nzs_3001_2_memory]
#   remedy: put the battery outside, or into a compartment that is tight toward the cabin and vented outside
package codebooks.vehicle.lithium_place

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "when": fact.all([shared.by_as_nzs_3001(input.site), shared.lithium(b.battery)]), "otherwise": "not built by AS/NZS 3001.2, or no lithium battery",
	"is_true": fact.all([b.declared.sealed_from_cabin, b.declared.vented_outside]), "because": "gas of a failing cell gets to where people live",
} if some b in input.banks
