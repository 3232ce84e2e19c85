# METADATA
# title: Insulation bears the maximum voltage of its circuit
# description: The voltage of 690.7 is the voltage for every later limit; on the bank's side the highest that charging brings counts.
# custom:
#   grade: stop
#   each: cable_runs
#   waivable: false
#   source: NEC 2023 690.7, 110.4
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a conductor for a higher voltage
package codebooks.us_2023.conductor_voltage

import data.codebooks.us_2023.shared

check contains {
	"about": x.id, "when": shared.covered(x, input.site), "otherwise": "not under this code",
	"is": shared.circuit_voltage(x, input.strings), "at_most": x.voltage,
} if {
	some x in input.cable_runs
	not shared.on_ac(x)
}

check contains {"about": x.id, "does_not_apply": "on the AC side"} if {
	some x in input.cable_runs
	shared.on_ac(x)
}
