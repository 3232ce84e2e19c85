# METADATA
# title: Charge current setting within the controller's rating
# description: "A setting above the rating cannot be had: either the controller refuses it, or the design counts on current that never comes."
# custom:
#   grade: fix
#   each: chargers
#   source: maker's data sheet
#   remedy: set the rated current or less
package codebooks.limits.charge_setting

check contains {"about": c.id, "is": c.settings.charge_current, "at_most": c.controller.charge_current_max} if some c in input.chargers
