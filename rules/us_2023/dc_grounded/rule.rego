# METADATA
# title: Banks above 60 V are grounded, or watched
# description: From 60 V to 300 V a two-wire dc system is grounded. One that is not has a ground-fault detector. Nominal voltage counts in our reading.
# custom:
#   grade: fix
#   each: banks
#   source: NEC 2023 250.162, 250.167
#   cites: [nec_2023, nec_2023_memory]
#   remedy: ground one pole at the source or the first disconnect, or fit a ground-fault detector
package codebooks.us_2023.dc_grounded

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "when": fact.all([shared.premises(input.site), fact.more_than(b.nominal, fact.number(60, "V"))]), "otherwise": "not above 60 V, or not under this code",
	"is_true": fact.any([fact.one_of(input.grounding.dc, ["negative", "positive"]), input.grounding.ground_fault_protection]), "because": "the bank is neither grounded nor watched by a detector",
} if some b in input.banks
