# METADATA
# title: Spare voltage on the coldest morning
# description: A night colder than any on record still comes. Some spare below the controller's limit costs little.
# custom:
#   grade: fix
#   each: pv_inputs
#   source: common practice; the share is a parameter
#   cites: [workshop]
#   remedy: take panels out of series, or choose a controller for a higher voltage
package codebooks.bookname.cold_spare

# Whom (about), what is measured (is), which limit (at_most). A fact stands for
# its value, its unit and its unknown: Go measures and compares.
check contains {
	"about": i.id,
	"is": fact.times([i.voc_cold, fact.plus([1, input.params.cold_spare])]),
	"at_most": i.controller.pv_voltage_max,
} if some i in input.pv_inputs
