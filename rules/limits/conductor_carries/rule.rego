# METADATA
# title: Conductors carry their current
# description: A conductor that carries more than it bears heats its insulation until that fails.
# custom:
#   grade: stop
#   each: cable_runs
#   waivable: false
#   source: maker's data sheet of the conductor; where only a code's table gives the ampacity, a code book judges it
#   remedy: use a larger conductor; give the ampacity from the cable's data sheet
package codebooks.limits.conductor_carries

check contains {"about": r.id, "is": r.current, "at_most": fact.times([r.ampacity, r.per_pole])} if some r in input.cable_runs
