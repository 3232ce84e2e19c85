# METADATA
# title: Array of a PWM controller still reaches the charging voltage when hot
# description: A PWM controller joins array and bank directly. An array whose working voltage falls below the charging voltage on a hot day gives next to nothing.
# custom:
#   grade: fix
#   each: pv_inputs
#   source: common practice
#   remedy: use panels with more cells in series, or a tracking controller
package codebooks.limits.pwm_array_voltage

check contains {
	"about": i.id, "when": fact.one_of(i.controller.kind, ["pwm"]), "otherwise": "a tracking controller: limits.start_headroom and limits.run_headroom",
	"is": i.vmp_hot, "at_least": i.charger.settings.absorption,
} if some i in input.pv_inputs
