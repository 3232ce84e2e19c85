# METADATA
# title: Hot array's working voltage high enough above the bank to go on charging
# description: The working voltage falls faster with heat than the open-circuit voltage, and the conductors take their share. Too close to the bank, charging stops at noon.
# custom:
#   grade: fix
#   each: pv_inputs
#   source: maker's data sheet; the array's curve after De Soto, Klein and Beckman, Solar Energy 80 (2006)
#   remedy: put more panels in series, or use larger conductors to the array
package codebooks.limits.run_headroom

check contains {
	"about": i.id, "when": fact.one_of(i.controller.kind, ["mppt"]), "otherwise": "a PWM controller connects array and bank directly: limits.pwm_array_voltage",
	"is": i.run_headroom, "at_least": fact.number(0, "V"),
} if some i in input.pv_inputs
