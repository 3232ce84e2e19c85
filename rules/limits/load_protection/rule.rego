# METADATA
# title: A fuse or breaker stands before every load on the bank
# description: The bank feeds a fault in a lamp's flex as readily as in a main cable. The flex needs a fuse that fits it.
# custom:
#   grade: fix
#   each: loads
#   source: common practice
#   remedy: put a fuse at the start of the load's conductors, such as in a fuse panel
package codebooks.limits.load_protection

check contains {
	"about": l.id, "is": fact.number(count(l.protections), ""), "at_least": fact.number(1, ""),
	"say": "{is} fuses or breakers stand before {about}; {limit} is due.",
} if {
	some l in input.loads
	count(l.banks) > 0
}

check contains {"about": l.id, "does_not_apply": "what feeds it limits its own current"} if {
	some l in input.loads
	count(l.banks) == 0
}
