# METADATA
# title: Array works inside the controller's tracking window
# description: "Outside its window a tracker cannot find the maximum: below it the array gives nothing on hot days, above it power is lost."
# custom:
#   grade: fix
#   each: pv_inputs
#   source: maker's data sheet
#   remedy: put more panels in series where the array is too low, fewer where it is too high
package codebooks.limits.mppt_window

check contains {
	"about": i.id, "which": "hot, lower end", "when": tracks(i), "otherwise": "a PWM controller has no tracking window",
	"is": i.vmp_hot, "at_least": i.controller.mppt_voltage_min,
} if some i in input.pv_inputs

check contains {
	"about": i.id, "which": "at 25 degC, upper end", "when": tracks(i), "otherwise": "a PWM controller has no tracking window",
	"is": i.vmp_stc, "at_most": i.controller.mppt_voltage_max,
} if some i in input.pv_inputs

check contains {
	"about": i.id, "which": "cold, upper end", "when": tracks(i), "otherwise": "a PWM controller has no tracking window",
	"is": i.vmp_cold, "at_most": i.controller.mppt_voltage_max,
} if some i in input.pv_inputs

tracks(i) := fact.one_of(i.controller.kind, ["mppt"])
