# METADATA
# title: Every bank has a battery switch
# description: When a cable burns, the bank must come off with one hand, and the switch must carry what the main fuse lets pass.
# custom:
#   grade: fix
#   each: banks
#   source: ABYC E-11 11.6.1 (above 800 A of cold cranking; rating at least that of the main device) and ISO 13297 battery switch (every bank, from memory)
#   cites: [abyc_e11, iso_13297_memory]
#   remedy: fit a battery switch at the bank, rated for its main fuse
#   equivalent:
#     - mutant: "1 / 1.01"
#       reason: "what stands there is counted whole: at least 0.99 is at least 1"
package codebooks.marine.battery_switch

import data.codebooks.marine.shared

check contains {
	"about": b.id, "which": "there", "when": fact.all([shared.boat(input.site), fact.any([shared.by("iso"), shared.lithium(b.battery), fact.more_than(b.declared.cold_cranking, fact.number(800, "A"))])]),
	"otherwise": "not a boat, or a bank of 800 A or less, which ABYC E-11 lets go without",
	"is": fact.number(count(b.disconnects), ""), "at_least": fact.number(1, ""),
	"say": "{is} switches stand at {about}; {limit} is due.",
} if some b in input.banks

check contains {
	"about": b.id, "which": "rating", "when": shared.boat(input.site), "otherwise": "not a boat",
	"is": d.rating, "at_least": p.rating,
} if {
	some b in input.banks
	some d in b.disconnects
	some p in b.protections
	not shared.in_each(p)
}
