# METADATA
# title: Insulation in engine spaces bears 70 degC
# description: An engine space is hot. For insulation of less than 70 degC the standard has no current there at all.
# custom:
#   grade: fix
#   each: cable_runs
#   source: ISO 13297 Table A.1 (from memory), no factor below 70 degC
#   cites: [iso_13297_memory]
#   remedy: use cable with insulation for more heat, or lead it elsewhere
package codebooks.marine.engine_insulation

import data.codebooks.marine.shared

check contains {
	"about": r.id, "when": fact.all([shared.boat(input.site), r.engine_space]), "otherwise": "not in the engine space of a boat",
	"is": r.insulation, "at_least": fact.number(70, "degC"),
} if some r in input.cable_runs
