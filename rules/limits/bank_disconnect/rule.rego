# METADATA
# title: Bank can be disconnected
# description: A bank cannot be switched off at its terminals. Without a switch every repair is done under a source of thousands of amperes.
# custom:
#   grade: fix
#   each: banks
#   source: common practice
#   remedy: put a switch for direct current behind the main fuse, or a breaker in its place
#   equivalent:
#     - mutant: "1 / 1.01"
#       reason: "what stands there is counted whole: at least 0.99 is at least 1"
package codebooks.limits.bank_disconnect

import data.codebooks.limits.shared

check contains {
	"about": b.id, "is": fact.number(count(b.disconnects), ""), "at_least": fact.number(1, ""),
	"say": "{is} switches stand at {about}; {limit} is due.",
} if {
	some b in input.banks
	not main_alone(b)
}

# A main breaker serves as a switch; a fuse does not.
check contains {
	"about": b.id, "is_true": fact.one_of(p.kind, ["breaker"]), "because": "a fuse is no switch, and there is no disconnect",
} if {
	some b in input.banks
	main_alone(b)
	some p in shared.mains(b)
}

main_alone(b) if {
	count(b.disconnects) == 0
	count(shared.mains(b)) > 0
}
