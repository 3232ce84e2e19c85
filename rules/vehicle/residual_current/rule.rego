# METADATA
# title: Sockets on an inverter have a residual-current device
# description: On wet floors of metal and with wet hands nothing but a device of 30 mA saves who touches a live part. It acts only where the neutral is bonded once.
# custom:
#   grade: fix
#   each: ac_outputs
#   source: "HD 60364-7-721 residual current, 30 mA (from memory)"
#   cites: [hd_60364_7_721]
#   remedy: fit a residual-current device of 30 mA behind the inverter, of a type that its maker allows, and test it
package codebooks.vehicle.residual_current

import data.codebooks.vehicle.shared

check contains {
	"about": o.id, "when": shared.vehicle(input.site), "otherwise": "not a vehicle",
	"is": o.declared.residual_current, "between": [fact.number(5, "mA"), fact.number(30, "mA")],
} if some o in input.ac_outputs
