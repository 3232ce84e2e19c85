# METADATA
# title: Array can be disconnected
# description: An array is live whenever there is light. Without a switch nobody can work on the controller, and the order of connection, battery first, cannot be kept.
# custom:
#   grade: fix
#   each: arrays
#   source: common practice
#   remedy: put a switch or a breaker for direct current between array and controller
#   equivalent:
#     - mutant: "1 / 1.01"
#       reason: "what stands there is counted whole: at least 0.99 is at least 1"
package codebooks.limits.array_disconnect

check contains {
	"about": a.id, "is": fact.number(count(a.disconnects), ""), "at_least": fact.number(1, ""),
	"say": "{is} switches stand between {about} and its charger; {limit} is due.",
} if {
	some a in input.arrays
	needs_switch(a)
}

# A breaker beside the run serves as a switch; a fuse does not.
check contains {
	"about": a.id, "is_true": fact.one_of(p.kind, ["breaker"]),
	"because": "a fuse is no switch, and there is no disconnect",
} if {
	some a in input.arrays
	count(a.disconnects) == 0
	some p in a.protections
}

# Judged by its switches alone: it has one, or nothing that could serve as one.
needs_switch(a) if count(a.disconnects) > 0

needs_switch(a) if count(a.protections) == 0
