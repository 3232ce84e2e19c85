# METADATA
# title: Disconnects are rated for the voltage of their circuit
# description: A switch for less than the coldest morning's voltage cannot break the circuit that it is there for.
# custom:
#   grade: stop
#   each: disconnects
#   waivable: false
#   source: NEC 2023 690.7, 690.13, 690.15, 706.15
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a switch for a higher dc voltage
package codebooks.us_2023.disconnect_voltage

import data.codebooks.us_2023.shared

check contains {
	"about": x.id, "when": shared.covered(x, input.site), "otherwise": "not under this code",
	"is": shared.circuit_voltage(x, input.strings), "at_most": x.voltage,
} if {
	some x in input.disconnects
	not shared.on_ac(x)
}

check contains {"about": x.id, "does_not_apply": "on the AC side"} if {
	some x in input.disconnects
	shared.on_ac(x)
}
