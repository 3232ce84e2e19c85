# METADATA
# title: Dwellings can shut their storage down from outside
# description: Who fights a fire must be able to stop the storage from outside the house.
# custom:
#   grade: fix
#   each: banks
#   source: NEC 2023 706.15(B)
#   cites: [nec_2023]
#   remedy: put an initiator for the emergency shutdown outside, where it can be reached
package codebooks.us_2023.emergency_shutdown

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "when": fact.all([shared.premises(input.site), shared.dwelling(input.site)]), "otherwise": "no one- or two-family dwelling, or not under this code",
	"is_true": b.declared.emergency_shutdown, "because": "there is no emergency shutdown from outside",
} if some b in input.banks
