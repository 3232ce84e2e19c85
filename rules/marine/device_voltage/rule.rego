# METADATA
# title: Device rated for the circuit's highest voltage
# description: A device that is rated for less than the circuit's voltage draws an arc that it cannot end.
# custom:
#   grade: fix
#   each: protections
#   source: 33 CFR 183.455, voltage rating at least that of the circuit; here against the highest voltage of charging
#   cites: [cfr_183]
#   remedy: use a fuse or breaker for a higher voltage
package codebooks.marine.device_voltage

import data.codebooks.marine.shared

check contains {
	"about": p.id, "when": shared.boat(input.site), "otherwise": "not a boat",
	"is": p.voltage, "at_least": p.bus_voltage,
} if {
	some p in input.protections
	not shared.on_ac(p)
}

check contains {"about": p.id, "does_not_apply": "on the AC side, for which the design knows no rated voltage"} if {
	some p in input.protections
	shared.on_ac(p)
}
