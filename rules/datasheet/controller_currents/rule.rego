# METADATA
# title: Operating current limit not above the short-circuit limit
# description: What an input may carry in service is never more than what it survives in a fault.
# custom:
#   grade: fix
#   each: controllers
#   source: maker's data sheet
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.controller_currents

check contains {"about": c.id, "is": c.pv_current_max, "at_most": c.pv_short_circuit_max} if some c in input.controllers
