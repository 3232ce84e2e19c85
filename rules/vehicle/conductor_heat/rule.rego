# METADATA
# title: Insulation bears the air around it
# description: "A conductor that must carry current is warmer than its air. Where the insulation bears no more than 10 K above it next to nothing is left, and no ampacity that a maker gives for cooler air may stand in there. Engine bays and roof ducts are such places."
# custom:
#   grade: fix
#   each: cable_runs
#   source: common practice; the tables of the standards of other installations end there
#   remedy: lead the conductor through cooler air, or use insulation for more heat
package codebooks.vehicle.conductor_heat

import data.codebooks.vehicle.shared

check contains {
	"about": r.id, "when": shared.vehicle(input.site), "otherwise": "not a vehicle",
	"is": r.insulation, "at_least": fact.plus([r.ambient, fact.number(10, "K")]),
} if some r in input.cable_runs
