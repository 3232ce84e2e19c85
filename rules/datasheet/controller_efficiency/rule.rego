# METADATA
# title: Efficiency of a controller as they have it
# description: Currents and energy are computed with this figure. Outside this range it is a share that was written as a percent, or a slip.
# custom:
#   grade: advise
#   each: controllers
#   source: common practice, from memory
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.controller_efficiency

check contains {"about": c.id, "is": c.efficiency, "between": [fact.number(75, "%"), fact.number(99.5, "%")]} if some c in input.controllers
