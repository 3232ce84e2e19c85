# METADATA
# title: Efficiency of a converter as they have it
# description: Currents and energy are computed with this figure. Outside this range it is a share that was written as a percent, or a slip.
# custom:
#   grade: advise
#   each: converters
#   source: common practice, from memory
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.converter_efficiency

check contains {"about": c.id, "is": c.efficiency, "between": [fact.number(70, "%"), fact.number(99.5, "%")]} if some c in input.converters
