# METADATA
# title: The code's labels are planned
# description: "Labels tell who comes later what is live, and what is not when a switch is open: highest dc voltage, the disconnect, PV raceways, rapid shutdown."
# custom:
#   grade: fix
#   each: arrays
#   source: NEC 2023 690.7(D), 690.12(D), 690.13(B), 690.31(D)(2)
#   cites: [nec_2023]
#   remedy: list the labels for this system and put them up
package codebooks.us_2023.labels

import data.codebooks.us_2023.shared

check contains {
	"about": a.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is_true": a.declared.labels, "because": "labels are not planned", "also": [input.system.dc_voltage_max],
} if some a in input.arrays
