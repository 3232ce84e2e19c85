# METADATA
# title: Efficiency of an inverter as they have it
# description: Currents and energy are computed with this figure. Outside this range it is a share that was written as a percent, or a slip.
# custom:
#   grade: advise
#   each: inverters
#   source: common practice, from memory
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.inverter_efficiency

check contains {"about": i.id, "is": i.efficiency, "between": [fact.number(70, "%"), fact.number(99.5, "%")]} if some i in input.inverters
