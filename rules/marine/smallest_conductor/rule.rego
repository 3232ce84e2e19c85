# METADATA
# title: No conductor too thin to last
# description: A boat shakes. Single conductors of less than 16 AWG, or 1 mm2, break; thinner ones live only inside a common sheath.
# custom:
#   grade: fix
#   each: cable_runs
#   source: 33 CFR 183.425 (16 AWG; 18 AWG in a sheath); ISO 13297 Table A.1 and the preview of ISO 10133 (1 mm2; 0.75 mm2 in a sheath)
#   cites: [cfr_183, iso_13297]
#   remedy: use a thicker conductor
package codebooks.marine.smallest_conductor

import data.codebooks.marine.shared

check contains {
	"about": r.id, "when": shared.boat(input.site), "otherwise": "not a boat",
	"is": r.area,
	"at_least": fact.either(
		fact.at_least(r.area, single), single,
		fact.either(r.sheathed, fact.either(shared.by("iso"), fact.number(0.75, "mm2"), fact.number(0.8231, "mm2")), single),
	),
} if {
	some r in input.cable_runs
	single := fact.either(shared.by("iso"), fact.number(1, "mm2"), fact.number(1.3087, "mm2"))
}
