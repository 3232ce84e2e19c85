# METADATA
# title: Conductors carry their current
# description: "A conductor that carries more than it bears heats its insulation until that fails. On the PV side a quarter is added to the short-circuit current: bright cloud edges and snow bring it."
# custom:
#   grade: stop
#   each: cable_runs
#   waivable: false
#   source: maker's data sheet of the conductor; 1.25 for bright sun as IEC 62548-1 takes it; where only a code's table gives the ampacity, a code book judges it
#   cites: [iec_62548_1]
#   remedy: use a larger conductor; give the ampacity from the cable's data sheet
#   yields: [ampacity]
package codebooks.limits.conductor_carries

import data.codebooks.limits.shared

check contains {"about": r.id, "is": borne(r), "at_most": fact.times([r.ampacity, r.per_pole])} if some r in input.cable_runs

borne(r) := shared.sustained(r) if not bare(r)

# A string's or array's run without a fuse bears, in a fault in it, what all else
# on the controller input and the controller feed into it.
borne(r) := fact.largest([shared.sustained(r), fact.minus(r.fault_current_near, r.current)]) if bare(r)

bare(r) if {
	count(array.concat(r.strings, r.arrays)) > 0
	count(r.protections) == 0
}
