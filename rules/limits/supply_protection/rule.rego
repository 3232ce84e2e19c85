# METADATA
# title: A fuse or breaker stands between bank and converter
# description: The bank feeds a fault in every conductor that leaves it, whichever way current flows in normal service. Each needs a fuse of its own that fits it.
# custom:
#   grade: stop
#   each: supplies
#   waivable: false
#   source: common practice
#   remedy: put a fuse or breaker where this conductor leaves the bank's bus
#   equivalent:
#     - mutant: "1 / 1.01"
#       reason: "what stands there is counted whole: at least 0.99 is at least 1"
package codebooks.limits.supply_protection

check contains {
	"about": u.id, "is": fact.number(count(u.protections), ""), "at_least": fact.number(1, ""),
	"say": "{is} fuses or breakers stand beside the conductors of {about}; {limit} is due.",
} if some u in input.supplies
