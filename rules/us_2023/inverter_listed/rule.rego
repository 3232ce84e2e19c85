# METADATA
# title: Inverters are listed
# description: What turns dc into the voltage of a wall socket has been tested for it.
# custom:
#   grade: fix
#   each: ac_outputs
#   source: NEC 2023 690.4(B), 710.6, 110.3(B)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a listed inverter
package codebooks.us_2023.inverter_listed

import data.codebooks.us_2023.shared

check contains {
	"about": o.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": o.declared.listed, "because": "the inverter is not listed",
} if some o in input.ac_outputs
