# METADATA
# title: Device no larger than its conductor bears
# description: "The schools differ: ISO takes the conductor's current itself, ABYC the next usual size within 150 %, the federal rule 150 % below 50 V."
# custom:
#   grade: fix
#   each: protections
#   source: 33 CFR 183.455 (150 % below 50 V), ABYC E-11 11.10.1 (next size within 150 %), ISO 13297 Table A.1 (100 %; for DC from memory)
#   cites: [cfr_183, abyc_e11, iso_13297_memory]
#   remedy: use a larger conductor or a smaller device
#   equivalent:
#     - mutant: "without not shared.in_each(p)"
#       reason: "the links between batteries have no cable_run: the language has none in each"
#     - mutant: "without not shared.in_each(p) #2"
#       reason: "the links between batteries have no cable_run: the language has none in each"
package codebooks.marine.device_rating

import data.codebooks.marine.shared

check contains {
	"about": p.id, "when": shared.boat(input.site), "otherwise": "not a boat",
	"is": p.rating, "at_most": allowed(p, shared.capacity(r)),
} if {
	some p in input.protections
	not shared.in_each(p)
	some r in p.cable_runs
}

check contains {"about": p.id, "does_not_apply": "no conductor of the design lies behind it"} if {
	some p in input.protections
	not has_run(p)
}

has_run(p) if {
	not shared.in_each(p)
	count(p.cable_runs) > 0
}

allowed(p, bears) := fact.either(
	shared.by("iso"), bears,
	fact.either(
		fact.all([shared.by("cfr"), fact.more_than(fact.number(50, "V"), p.bus_voltage)]),
		fact.times([1.5, bears]),
		fact.smallest([fact.times([1.5, bears]), fact.either(fact.at_least(fact.number(500, "A"), bears), fact.lookup("standard_sizes", [bears]), bears)]),
	),
)
