# METADATA
# title: In a floating system the battery switch opens both poles
# description: Where neither pole is grounded a switch in the positive leaves the other pole on everything aboard.
# custom:
#   grade: fix
#   each: banks
#   source: ISO 13297 battery switch, both poles of a system that is fully insulated (from memory)
#   cites: [iso_13297_memory]
#   remedy: fit a two-pole battery switch, or ground the negative at one point
#   equivalent:
#     - mutant: "2 / 1.01"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
package codebooks.marine.switch_poles

import data.codebooks.marine.shared

check contains {
	"about": b.id, "when": fact.all([shared.boat(input.site), fact.one_of(input.grounding.dc, ["floating"])]), "otherwise": "not a boat, or a pole is grounded",
	"is": d.poles, "at_least": fact.number(2, ""),
} if {
	some b in input.banks
	some d in b.disconnects
}

check contains {"about": b.id, "does_not_apply": "it has no switch, which is judged by itself"} if {
	some b in input.banks
	count(b.disconnects) == 0
}
