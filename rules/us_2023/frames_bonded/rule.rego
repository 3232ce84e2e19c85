# METADATA
# title: Panel frames and metal cases are bonded
# description: A frame that a damaged lead touches is live until somebody else touches it.
# custom:
#   grade: stop
#   each: grounding
#   source: NEC 2023 690.43
#   cites: [nec_2023, nec_2023_memory]
#   remedy: bond frames and racks by a listed system, and lead a grounding conductor with the circuit
package codebooks.us_2023.frames_bonded

import data.codebooks.us_2023.shared

check contains {
	"about": input.grounding.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is_true": input.grounding.frames_bonded, "because": "frames are not bonded",
} if count(input.arrays) > 0

check contains {"about": input.grounding.id, "does_not_apply": "there is no array"} if count(input.arrays) == 0
