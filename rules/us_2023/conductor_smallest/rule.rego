# METADATA
# title: Conductors are no smaller than the code's least
# description: Below 14 AWG copper and 12 AWG aluminum a conductor breaks too easily to be wired in a building.
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 310.3(A), 690.31
#   cites: [nec_2023_memory]
#   remedy: use 14 AWG copper or more, 12 AWG aluminum or more
package codebooks.us_2023.conductor_smallest

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": shared.covered(r, input.site), "otherwise": "not under this code",
	"is": shared.size(r), "at_least": shared.smallest_size(r),
} if some r in input.cable_runs
