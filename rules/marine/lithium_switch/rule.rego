# METADATA
# title: The remote switch of a lithium bank opens the contactor itself
# description: A switch that asks the electronics to open does nothing when the electronics have failed.
# custom:
#   grade: fix
#   each: banks
#   source: ABYC E-13.6.7.1.1 (2025)
#   cites: [abyc_e13]
#   remedy: let the switch interrupt the contactor's own supply; use a contactor that falls open
package codebooks.marine.lithium_switch

import data.codebooks.marine.shared

check contains {
	"about": b.id, "when": shared.large_lithium(b), "otherwise": "not a boat, or no lithium bank of the size that the standards speak of",
	"is_true": b.declared.remote_switch_direct, "because": "its remote switch does not open the contactor's own supply",
} if some b in input.banks
