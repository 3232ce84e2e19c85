# METADATA
# title: Conductors below ground lie deep enough
# description: "A spade goes deep: 24 in of cover for cable in the earth, 18 in over a plastic raceway, 6 in over rigid metal."
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 300.5, 690.31
#   cites: [nec_2023_memory]
#   remedy: lay it deeper, or in a rigid metal raceway
package codebooks.us_2023.burial

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": fact.all([shared.covered(r, input.site), fact.one_of(r.method, ["buried", "direct_buried"])]), "otherwise": "not below ground, or not under this code",
	"is": r.declared.depth, "at_least": fact.either(metal(r), fact.number(6, "in"), fact.either(plastic(r), fact.number(18, "in"), fact.number(24, "in"))),
} if some r in input.cable_runs

metal(r) := fact.all([fact.one_of(r.method, ["buried"]), fact.one_of(r.declared.raceway, ["metal"])])

plastic(r) := fact.all([fact.one_of(r.method, ["buried"]), fact.one_of(r.declared.raceway, ["nonmetallic"])])
