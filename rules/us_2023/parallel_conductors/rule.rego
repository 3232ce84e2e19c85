# METADATA
# title: Conductors in parallel are 1/0 AWG or larger
# description: "Small conductors side by side share unevenly: one carries too much and nobody sees it. All must be of one length, material and size."
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 310.10(G)
#   cites: [nec_2023_memory]
#   remedy: use one larger conductor for each pole
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "conductors are counted whole: more than 1.01 is more than 1"
package codebooks.us_2023.parallel_conductors

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": fact.all([shared.covered(r, input.site), fact.more_than(r.per_pole, 1)]), "otherwise": "one conductor for each pole, or not under this code",
	"is": shared.size(r), "at_least": fact.lookup("parallel_310_10", [r.material]),
} if some r in input.cable_runs
