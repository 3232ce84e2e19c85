# METADATA
# title: The inverter carries the largest load on it
# description: A stand-alone source may be smaller than all loads together, but not than the largest single one.
# custom:
#   grade: fix
#   each: ac_outputs
#   source: NEC 2023 710.15(A)
#   cites: [nec_2023]
#   remedy: use a larger inverter, or a smaller load
package codebooks.us_2023.source_capacity

import data.codebooks.us_2023.shared

check contains {
	"about": o.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is": fact.largest(array.concat([fact.number(0, "W")], [l.power | some l in loads(o)])), "at_most": o.inverter.continuous,
} if some o in input.ac_outputs

loads(o) := [l | some l in input.loads; some x in l.ac_outputs; x.id == o.id]
