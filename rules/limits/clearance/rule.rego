# METADATA
# title: Controller has the clear air that it needs
# description: Controllers without a fan are cooled by air that rises past them. Without clear space they run hot and give less.
# custom:
#   grade: fix
#   each: chargers
#   source: maker's data sheet
#   remedy: move it, or clear the space above and below
package codebooks.limits.clearance

check contains {"about": c.id, "is": c.clearance, "at_least": c.controller.clearance_min} if some c in input.chargers
