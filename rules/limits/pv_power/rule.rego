# METADATA
# title: Array power within the most that the controller is made for
# description: Makers state the largest array for a controller, as a power or as a share of its output; either is judged. Beyond it warranty ends, and where the figure is more than nominal so does the controller.
# custom:
#   grade: fix
#   each: chargers
#   source: maker's data sheet
#   remedy: share the panels out over more controllers
package codebooks.limits.pv_power

check contains {"about": c.id, "is": c.pv_power, "at_most": c.pv_power_limit} if some c in input.chargers
