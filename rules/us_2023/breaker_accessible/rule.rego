# METADATA
# title: Breakers that serve as disconnects can be reached quickly and locked
# description: Where no switch stands beside it the breaker is what somebody must reach in a fire, without a ladder, and what must stay open while they work.
# custom:
#   grade: fix
#   each: protections
#   source: NEC 2023 690.13, 690.15(C), 706.15(B)
#   cites: [nec_2023]
#   remedy: place the breaker where it can be reached and choose one that can be locked open, or put a switch beside it
package codebooks.us_2023.breaker_accessible

import data.codebooks.us_2023.shared

check contains {
	"about": p.id, "which": "reach", "when": due(p), "otherwise": "a fuse, or not under this code",
	"is_true": p.declared.readily_accessible, "because": "it serves as the disconnect, and cannot be reached quickly",
} if {
	some p in input.protections
	alone(p)
}

check contains {
	"about": p.id, "which": "lock", "when": due(p), "otherwise": "a fuse, or not under this code",
	"is_true": p.declared.lockable, "because": "it serves as the disconnect, and cannot be locked open",
} if {
	some p in input.protections
	alone(p)
}

check contains {"about": p.id, "does_not_apply": "a switch stands beside it, or it stands in neither an array's nor a bank's main conductors"} if {
	some p in input.protections
	not alone(p)
}

due(p) := fact.all([shared.covered(p, input.site), fact.one_of(p.kind, ["breaker"])])

alone(p) if {
	count(array.concat(p.arrays, p.banks)) > 0
	count(p.disconnects) == 0
	not shared.in_each(p)
}
