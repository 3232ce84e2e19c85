# METADATA
# title: Array current within what a PWM controller can switch
# description: "A PWM controller cannot clip: whatever the array gives goes through its switches and on to the bank. More than its rating burns it."
# custom:
#   grade: stop
#   each: pv_inputs
#   waivable: false
#   source: maker's data sheet
#   remedy: take strings out of parallel, or choose a larger controller
package codebooks.limits.pwm_input_current

check contains {
	"about": i.id, "which": "input", "when": pwm(i), "otherwise": "a tracking controller: limits.operating_current",
	"is": i.isc_max, "at_most": i.controller.pv_current_max,
} if some i in input.pv_inputs

check contains {
	"about": i.id, "which": "charge current", "when": pwm(i), "otherwise": "a tracking controller limits its charge current itself",
	"is": i.isc_max, "at_most": i.controller.charge_current_max,
} if some i in input.pv_inputs

pwm(i) := fact.one_of(i.controller.kind, ["pwm"])
