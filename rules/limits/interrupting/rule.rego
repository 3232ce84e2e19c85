# METADATA
# title: Fuses and breakers can interrupt what a fault draws
# description: A lithium bank gives thousands of amperes into a short circuit. A fuse that cannot interrupt them explodes, and the arc goes on. A management system is not counted on for this, nor the resistance of cables, which is the safe side.
# custom:
#   grade: stop
#   each: protections
#   waivable: false
#   source: "common practice: 20 kA class where the fault current exceeds 10 kA; the bank's figure is its maker's"
#   remedy: use a fuse with more interrupting capacity, such as class T at a lithium bank
package codebooks.limits.interrupting

import data.codebooks.limits.shared

check contains {"about": p.id, "is": p.fault_current, "at_most": p.interrupts} if {
	some p in input.protections
	judged(p)
}

check contains {"about": p.id, "does_not_apply": "on the AC side, or behind a controller's electronic switch"} if {
	some p in input.protections
	not judged(p)
}

judged(p) if {
	not shared.on_ac(p)
	not on_terminals(p)
}

on_terminals(p) if {
	some l in p.loads
	count(l.chargers) > 0
}
