# METADATA
# title: Cold voltage within the limit with the tolerance of the panels on top
# description: A data sheet allows its values a tolerance, and a panel at its upper end makes that much more voltage on the coldest morning.
# custom:
#   grade: advise
#   each: pv_inputs
#   source: common practice
#   remedy: take panels out of series, or have the strings measured and write the tolerance that they keep
package codebooks.practice.spare_voltage

check contains {
	"about": i.id, "is": fact.times([i.voc_cold, fact.plus([1, worst(i)])]), "at_most": i.controller.pv_voltage_max,
} if some i in input.pv_inputs

# The largest tolerance of the panels on an input.
worst(i) := fact.largest([p.tolerance | some s in input.strings; s.pv_input.id == i.id; some p in s.panels])
