# METADATA
# title: Few parallel strings of lead batteries
# description: "Parallel strings of lead never share alike: the weakest is discharged most and dies first, and then empties the others."
# custom:
#   grade: advise
#   each: banks
#   source: "common practice: three to four at most; a workshop may set another figure"
#   remedy: use larger batteries or cells of lower voltage in one or two strings
package codebooks.limits.lead_parallel

import data.codebooks.limits.shared

check contains {
	"about": b.id, "when": shared.lead(b.battery), "otherwise": "not a lead battery: limits.parallel_count",
	"is": b.parallel, "at_most": input.params.lead_parallel_max,
} if some b in input.banks
