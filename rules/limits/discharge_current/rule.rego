# METADATA
# title: Bank can give what it feeds, all together
# description: More than the battery may give for long heats it; more than its management system lets out switches everything off.
# custom:
#   grade: fix
#   each: banks
#   source: maker's data sheet
#   remedy: put more batteries in parallel, or choose a smaller inverter
package codebooks.limits.discharge_current

check contains {"about": b.id, "is": b.discharge_current_continuous, "at_most": b.discharge_current_accepted} if some b in input.banks
