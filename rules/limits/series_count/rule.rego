# METADATA
# title: No more batteries in series than the maker allows
# description: When one management system of several in series opens, its switches see the voltage of the whole string. Those made for one battery are destroyed and conduct for ever after.
# custom:
#   grade: stop
#   each: banks
#   waivable: false
#   source: maker's data sheet
#   remedy: use batteries of a higher voltage
package codebooks.limits.series_count

check contains {"about": b.id, "is": b.series, "at_most": b.battery.series_max} if some b in input.banks
