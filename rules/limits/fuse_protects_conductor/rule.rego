# METADATA
# title: Fuse or breaker no larger than its conductor bears
# description: A fuse protects the conductor behind it, not the load. One that is sized to the load lets a fault burn the cable instead.
# custom:
#   grade: stop
#   each: protections
#   waivable: false
#   source: maker's data sheet of the conductor; where only a code's table gives the ampacity, a code book judges it
#   remedy: use a larger conductor or a smaller fuse; give the ampacity from the cable's data sheet
#   yields: [ampacity]
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "nothing is described: 0 is fewer than either"
#     - mutant: "1 / 1.01"
#       reason: "nothing is described: 0 is fewer than either"
#     - mutant: "without not shared.in_each(p)"
#       reason: "the links between batteries have no cable_run: the language has none in each"
package codebooks.limits.fuse_protects_conductor

import data.codebooks.limits.shared

check contains {"about": p.id, "is": p.rating, "at_most": fact.times([r.ampacity, r.per_pole])} if {
	some p in input.protections
	not shared.in_each(p)
	some r in p.cable_runs
}

check contains {
	"about": p.id, "is": fact.number(0, ""), "at_least": fact.number(1, ""),
	"say": "No conductor is described that {about} protects.",
	"remedy": "add the cable_run that it protects beside it",
} if {
	some p in input.protections
	not shared.in_each(p)
	count(p.cable_runs) == 0
}

check contains {"about": p.id, "does_not_apply": "the links between batteries are their maker's"} if {
	some p in input.protections
	shared.in_each(p)
}
