# METADATA
# title: Sockets on an inverter have a residual-current device
# description: On wet floors of metal and with wet hands nothing but a device of 30 mA saves who touches a live part. It acts only where the neutral is bonded once.
# custom:
#   grade: fix
#   each: ac_outputs
#   source: "ISO 13297 residual current, 30 mA at most (from memory); others ask for 5 or 10 mA in galley and heads"
#   cites: [iso_13297_memory]
#   remedy: fit a residual-current device of 30 mA behind the inverter, of a type that its maker allows, and test it
package codebooks.marine.residual_current

import data.codebooks.marine.shared

check contains {
	"about": o.id, "when": shared.boat(input.site), "otherwise": "not a boat",
	"is": o.declared.residual_current, "between": [fact.number(5, "mA"), fact.number(30, "mA")],
} if some o in input.ac_outputs
