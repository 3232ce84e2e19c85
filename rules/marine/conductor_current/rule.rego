# METADATA
# title: Conductors carry their current
# description: A conductor that carries more than it bears heats its insulation until that fails; in the heat of an engine space, and in a bundle, it bears less.
# custom:
#   grade: fix
#   each: cable_runs
#   source: 33 CFR 183.425, Table 5; ABYC E-11 11.14, bundles; ISO 13297 Table A.1 (from memory, by default)
#   cites: [cfr_183, abyc_e11, iso_13297_memory]
#   remedy: use a larger conductor, insulation for more heat, or another route; beyond the tables give the ampacity from its data sheet
package codebooks.marine.conductor_current

import data.codebooks.marine.shared

check contains {
	"about": r.id, "when": shared.boat(input.site), "otherwise": "not a boat",
	"is": shared.needed(r), "at_most": shared.capacity(r),
} if {
	some r in input.cable_runs
	not shared.on_ac(r)
}

check contains {"about": r.id, "does_not_apply": "on the AC side"} if {
	some r in input.cable_runs
	shared.on_ac(r)
}
