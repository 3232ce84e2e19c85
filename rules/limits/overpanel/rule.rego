# METADATA
# title: Array no larger than the maker allows for the controller's output
# description: More array than full output is good for mornings and winter, and is clipped at noon. How much more the controller bears, its maker says, as a share of its output or as a power.
# custom:
#   grade: fix
#   each: chargers
#   source: maker's data sheet; common practice
#   remedy: take panels away, raise the bank's voltage, or add a controller
package codebooks.limits.overpanel

check contains {"about": c.id, "is": c.overpanel, "at_most": c.overpanel_limit} if some c in input.chargers
