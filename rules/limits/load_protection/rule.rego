# METADATA
# title: Every load's conductors are protected
# description: The bank feeds a fault in a lamp's flex as readily as in a main cable. The flex needs a fuse that fits it. A converter and a controller's load terminals limit their current, but to their own rating, which thin flex does not bear.
# custom:
#   grade: fix
#   each: loads
#   source: common practice
#   remedy: put a fuse at the start of the load's conductors, such as in a fuse panel
#   equivalent:
#     - mutant: "1 / 1.01"
#       reason: "what stands there is counted whole: at least 0.99 is at least 1"
package codebooks.limits.load_protection

check contains {
	"about": l.id, "is": fact.number(count(l.protections), ""), "at_least": fact.number(1, ""),
	"say": "{is} fuses or breakers stand before {about}; {limit} is due.",
} if {
	some l in input.loads
	count(l.banks) > 0
}

# Without a fuse the conductor must bear all that its source can give.
check contains {
	"about": l.id, "is": limited(l), "at_most": fact.times([r.ampacity, r.per_pole]),
	"say": "No fuse stands before {about}, and what feeds it can give {is}; its conductors bear {limit}.",
} if {
	some l in input.loads
	bare(l)
	some r in l.cable_runs
}

check contains {"about": l.id, "does_not_apply": "on an inverter; or behind a converter or load terminals, with a fuse or with no conductor described"} if {
	some l in input.loads
	count(l.banks) == 0
	not judged(l)
}

judged(l) if {
	bare(l)
	count(l.cable_runs) > 0
}

# Behind a converter or a controller's load terminals, with no fuse.
bare(l) if {
	count(array.concat(l.supplies, l.chargers)) > 0
	count(l.protections) == 0
}

limited(l) := u.converter.current if some u in l.supplies

limited(l) := c.controller.load_current_max if some c in l.chargers
