# METADATA
# title: Batteries stay where they are in a crash
# description: A battery of thirty kilograms that breaks loose goes through the cabin, and shorts itself on the way.
# custom:
#   grade: fix
#   each: banks
#   source: "NEC 552.10(D): batteries securely attached to the vehicle; EN 1648 auxiliary battery (from memory); common practice in every vehicle"
#   cites: [nec_552, en_1648_memory]
#   remedy: bolt or strap the batteries to the frame
package codebooks.vehicle.fastened

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "when": shared.vehicle(input.site), "otherwise": "not a vehicle",
	"is_true": b.declared.restrained, "because": "it is not fastened",
} if some b in input.banks
