# METADATA
# title: Switches may be opened under load
# description: In an emergency nobody waits until no current flows. A switch that may not be opened under load then draws an arc.
# custom:
#   grade: fix
#   each: disconnects
#   source: common practice
#   remedy: use a switch with a load-break rating for direct current
package codebooks.limits.load_break

check contains {"about": d.id, "is_true": d.load_break, "because": "it may not be opened under load"} if some d in input.disconnects
