# METADATA
# title: Hot array still high enough above the bank to start the controller
# description: A tracker needs the array some volts above the bank before it starts. On a hot day at absorption or equalizing voltage the array is lowest and the bank highest.
# custom:
#   grade: fix
#   each: pv_inputs
#   source: maker's data sheet
#   remedy: put more panels in series
package codebooks.limits.start_headroom

check contains {
	"about": i.id, "when": fact.one_of(i.controller.kind, ["mppt"]), "otherwise": "a PWM controller connects array and bank directly: limits.pwm_array_voltage",
	"is": i.start_headroom, "at_least": fact.number(0, "V"),
} if some i in input.pv_inputs
