# METADATA
# title: Fuses and breakers are listed for the voltage of their circuit
# description: Above its listed dc voltage a device may not put out its arc. On the PV side the coldest morning counts.
# custom:
#   grade: stop
#   each: protections
#   waivable: false
#   source: NEC 2023 690.7, 690.9(B), 706.31(C)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a device listed for a higher dc voltage
package codebooks.us_2023.device_voltage

import data.codebooks.us_2023.shared

check contains {
	"about": x.id, "when": shared.covered(x, input.site), "otherwise": "not under this code",
	"is": shared.circuit_voltage(x, input.strings), "at_most": x.voltage,
} if {
	some x in input.protections
	not shared.on_ac(x)
}

check contains {"about": x.id, "does_not_apply": "on the AC side"} if {
	some x in input.protections
	shared.on_ac(x)
}
