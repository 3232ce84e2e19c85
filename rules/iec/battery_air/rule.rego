# METADATA
# title: Air enough for the bank's gas
# description: Lead batteries give off hydrogen as they charge; 4 % of it in air explodes. The faster they gas, the more air must pass.
# custom:
#   grade: stop
#   each: banks
#   source: "IEC 62485-2 7.2: Q = 0.05 x n x Igas x C, openings of 28 x Q"
#   cites: [iec_62485_2]
#   remedy: enlarge inlet and outlet, fit a fan with an interlock, or move the bank; charge at a lower voltage
package codebooks.iec.battery_air

import data.codebooks.iec.shared

check contains {
	"about": b.id, "which": "openings",
	"when": fact.all([shared.lead(b), fact.one_of(b.declared.ventilation, ["natural"])]), "otherwise": "no lead bank, or a fan moves the air",
	"is": b.declared.vent_area, "at_least": fact.times([fact.number(28, "cm2"), fact.ratio(shared.air(b), fact.number(1, "m3/h"))]),
} if {
	some b in input.banks
	count(shared.sources(b)) > 0
}

check contains {
	"about": b.id, "which": "fan",
	"when": fact.all([shared.lead(b), fact.one_of(b.declared.ventilation, ["forced"])]), "otherwise": "no lead bank, or air moves by itself",
	"is": b.declared.forced_air, "at_least": shared.air(b),
} if {
	some b in input.banks
	count(shared.sources(b)) > 0
}

check contains {"about": b.id, "does_not_apply": "nothing charges it"} if {
	some b in input.banks
	count(shared.sources(b)) == 0
}
