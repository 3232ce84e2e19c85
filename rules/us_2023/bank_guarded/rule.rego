# METADATA
# title: Live parts of banks are guarded
# description: A spanner across the terminals of a bank draws thousands of amperes, at any voltage.
# custom:
#   grade: fix
#   each: banks
#   source: NEC 2023 480.10, 110.27
#   cites: [nec_2023_memory]
#   remedy: cover the terminals, or put the bank into an enclosure or room of its own
package codebooks.us_2023.bank_guarded

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": b.declared.guarded, "because": "live parts of the bank can be touched",
} if some b in input.banks
