# METADATA
# title: Array's operating current within what the tracker can use
# description: A tracker leaves current above its input rating unused. That harms nothing, but the power is paid for and not had.
# custom:
#   grade: advise
#   each: pv_inputs
#   source: maker's data sheet
#   remedy: put more panels in series and fewer in parallel, or share them out over more controllers
package codebooks.limits.operating_current

check contains {
	"about": i.id, "when": fact.one_of(i.controller.kind, ["mppt"]), "otherwise": "a PWM controller: limits.pwm_input_current",
	"is": i.imp_stc, "at_most": i.controller.pv_current_max,
} if some i in input.pv_inputs
