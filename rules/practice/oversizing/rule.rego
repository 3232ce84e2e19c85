# METADATA
# title: Array in proportion to the controller
# description: Some more array than full output pays in mornings and winter. Beyond that the next panel gives little, and a second controller gives more.
# custom:
#   grade: advise
#   each: chargers
#   source: common practice
#   remedy: put the further panels on a controller of their own, or raise the bank's voltage
package codebooks.practice.oversizing

check contains {"about": c.id, "is": c.overpanel, "at_most": input.params.oversizing_max} if some c in input.chargers
