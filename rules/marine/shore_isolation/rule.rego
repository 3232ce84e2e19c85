# METADATA
# title: The shore's earth is parted from the hull
# description: The earth wire of the shore joins the boat to every other one on the pier, a battery of hulls, in which the baser metal dissolves, fittings below the waterline first.
# custom:
#   grade: advise
#   each: charge_sources
#   source: ABYC A-28, galvanic isolators (from memory); common practice aboard
#   cites: [abyc_memory]
#   remedy: fit a galvanic isolator that fails safe in the earth wire, or an isolating transformer; never cut the earth wire
package codebooks.marine.shore_isolation

import data.codebooks.marine.shared

check contains {
	"about": e.id, "when": fact.all([shared.boat(input.site), e.declared.shore_power]), "otherwise": "not a boat, or not on shore power",
	"is_true": fact.one_of(e.declared.shore_isolation, ["isolating_transformer", "galvanic_isolator"]), "because": "the hull stands on the shore's earth",
} if some e in input.charge_sources
