# METADATA
# title: The dc system is joined to ground at one point, or floats
# description: Two connections make the ground a parallel conductor, and the ground-fault device blind. With such a device it makes the one connection itself.
# custom:
#   grade: fix
#   each: grounding
#   source: NEC 2023 690.42, 250.164
#   cites: [nec_2023_memory]
#   remedy: leave one connection
package codebooks.us_2023.ground_connection

import data.codebooks.us_2023.shared

check contains {
	"about": g.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is": g.dc_bonds, "equals": fact.either(fact.one_of(g.dc, ["floating"]), fact.number(0, ""), fact.number(1, "")),
} if g := input.grounding
