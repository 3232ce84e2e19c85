# METADATA
# title: Limit stated for 25 degC not above the absolute one
# description: The limit for 25 degC keeps something in hand for cold mornings. It is never above the absolute limit.
# custom:
#   grade: fix
#   each: controllers
#   source: maker's data sheet
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.controller_voltage_25

check contains {"about": c.id, "is": c.pv_voltage_max_25, "at_most": c.pv_voltage_max} if some c in input.controllers
