# METADATA
# title: Management system lets the largest surge out
# description: Motors take two to six times their current when they start. A management system that sees this on top of the rest opens, and everything goes dark.
# custom:
#   grade: fix
#   each: banks
#   source: maker's data sheet
#   remedy: put more batteries in parallel, or choose ones whose system lets more out
package codebooks.limits.discharge_peak

import data.codebooks.limits.shared

check contains {
	"about": b.id, "when": shared.managed(b.battery), "otherwise": "a lead battery has no management system",
	"is": b.discharge_current_peak, "at_most": b.bms_discharge_cutoff,
} if some b in input.banks
