# METADATA
# title: The DC side is bonded at one point
# description: With two bonds current takes both ways, one of them through the hull and the fittings, and eats them.
# custom:
#   grade: fix
#   each: grounding
#   source: common practice aboard
#   remedy: leave one bond between DC negative and the boat's bonding
package codebooks.marine.one_bond

import data.codebooks.marine.shared

check contains {
	"about": "grounding", "when": fact.all([shared.boat(input.site), fact.no(fact.one_of(input.grounding.dc, ["floating"]))]), "otherwise": "not a boat, or a floating system",
	"is": input.grounding.dc_bonds, "equals": fact.number(1, ""),
}
