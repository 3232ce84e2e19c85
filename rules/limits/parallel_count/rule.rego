# METADATA
# title: No more batteries in parallel than the maker allows
# description: The more strings stand in parallel, the less evenly they share, and the more current flows into one that fails.
# custom:
#   grade: fix
#   each: banks
#   source: maker's data sheet
#   remedy: use larger batteries
package codebooks.limits.parallel_count

check contains {"about": b.id, "is": b.parallel, "at_most": b.battery.parallel_max} if some b in input.banks
