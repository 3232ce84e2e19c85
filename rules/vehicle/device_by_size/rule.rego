# METADATA
# title: Small conductors have small devices
# description: For the sizes of lamps and pumps the code names the largest device for each.
# custom:
#   grade: fix
#   each: protections
#   source: "NEC 552.10(E) (from memory): 18 AWG 6 A, 16 AWG 8 A, 14 AWG 15 A, 12 AWG 20 A, 10 AWG 30 A"
#   cites: [nec_552_memory]
#   remedy: use a larger conductor or a smaller device
#   equivalent:
#     - mutant: "without not shared.in_each(p)"
#       reason: "the links between batteries have no cable_run: the language has none in each"
#     - mutant: "without not shared.in_each(p) #2"
#       reason: "the links between batteries have no cable_run: the language has none in each"
package codebooks.vehicle.device_by_size

import data.codebooks.vehicle.shared

check contains {
	"about": p.id,
	"when": fact.all([shared.by_nec_552(input.site), fact.more_than(fact.number(8.36, "mm2"), r.area)]),
	"otherwise": "not built by NEC article 552, or 8 AWG and larger, which the book limits judges by the maker's ampacity",
	"is": p.rating,
	"at_most": fact.either(fact.at_least(r.area, fact.number(0.823, "mm2")), fact.lookup("device_by_size", [r.area]), fact.number(0, "A")),
} if {
	some p in input.protections
	not shared.in_each(p)
	not shared.on_ac(p)
	some r in p.cable_runs
}

check contains {"about": p.id, "does_not_apply": "no low-voltage conductor of the design lies behind it"} if {
	some p in input.protections
	not has_run(p)
}

has_run(p) if {
	not shared.in_each(p)
	not shared.on_ac(p)
	count(p.cable_runs) > 0
}
