# METADATA
# title: In a floating system devices open both poles
# description: Where neither pole is grounded both are live. A fuse in the positive alone does not see a fault that returns through hull and fittings to the negative.
# custom:
#   grade: fix
#   each: protections
#   source: 33 CFR 183.455 and ABYC E-11 11.10.1, a device in each ungrounded conductor; ISO 13297 12.1, a system that is fully insulated (from memory)
#   cites: [cfr_183, abyc_e11, iso_13297_memory]
#   remedy: fit two-pole breakers, or a fuse in each pole and say so; or ground the negative at one point
#   equivalent:
#     - mutant: "2 / 1.01"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
package codebooks.marine.poles

import data.codebooks.marine.shared

check contains {
	"about": p.id, "when": fact.all([shared.boat(input.site), fact.one_of(input.grounding.dc, ["floating"])]), "otherwise": "not a boat, or a pole is grounded",
	"is": p.poles, "at_least": fact.number(2, ""),
} if {
	some p in input.protections
	judged(p)
}

check contains {"about": p.id, "does_not_apply": "no bank feeds a fault here, or it stands between batteries"} if {
	some p in input.protections
	not judged(p)
}

judged(p) if {
	shared.bank_feeds(p)
	not shared.in_each(p)
}
