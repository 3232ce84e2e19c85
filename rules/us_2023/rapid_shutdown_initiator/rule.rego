# METADATA
# title: Dwellings start the rapid shutdown from outside
# description: At a one- or two-family dwelling the initiator is readily accessible outside, so that nobody has to go in.
# custom:
#   grade: fix
#   each: arrays
#   source: NEC 2023 690.12(C)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: put the initiator outside, where it can be reached
package codebooks.us_2023.rapid_shutdown_initiator

import data.codebooks.us_2023.shared

check contains {
	"about": a.id, "when": fact.all([shared.shutdown_due(a, input.strings, input.site), shared.dwelling(input.site)]), "otherwise": "no dwelling, no rapid shutdown is due, or not under this code",
	"is_true": a.declared.initiator_outside, "because": "the initiator is not outside",
} if some a in input.arrays
