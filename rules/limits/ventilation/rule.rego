# METADATA
# title: The space of a lead bank is open to the outside air
# description: "Lead batteries give off hydrogen as they charge, sealed ones when they are overcharged or fail; 4 % of it in air explodes. It rises, so that an opening low and one high are needed. A code in force asks for more: how large they are, and where they lead."
# custom:
#   grade: fix
#   each: banks
#   source: common practice; IEC 62485-2
#   cites: [iec_62485_2]
#   remedy: open the space to the outside, low and high, and say so with ventilated
package codebooks.limits.ventilation

import data.codebooks.limits.shared

check contains {
	"about": b.id, "when": shared.lead(b.battery), "otherwise": "a lithium or sodium battery gives off no gas in normal service",
	"is_true": b.ventilated, "because": "the gas of the bank has no way out",
} if some b in input.banks
