# METADATA
# title: Small conductors have small fuses
# description: "14, 12 and 10 AWG copper burn before a larger device notices: 15, 20 and 30 A are the most, whatever the tables allow after correction."
# custom:
#   grade: stop
#   each: protections
#   waivable: false
#   source: NEC 2023 240.4(D); 240.4(G) makes no exception for PV
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a smaller device or a larger conductor
package codebooks.us_2023.small_conductor

import data.codebooks.us_2023.shared

check contains {
	"about": p.id, "when": fact.all([shared.covered(p, input.site), fact.more_than(fact.number(8, "AWG"), shared.size(r))]),
	"otherwise": "the conductor is larger than 10 AWG, or not under this code",
	"is": p.rating,
	"at_most": fact.either(fact.at_least(shared.size(r), least(r)), fact.lookup("small_240_4_d", [r.material, shared.size(r)]), fact.number(0, "A")),
} if {
	some p in input.protections
	some r in shared.runs_beside(p, input.cable_runs)
}

# The list begins with 18 AWG copper and 12 AWG aluminum.
least(r) := fact.either(fact.one_of(r.material, ["Cu"]), fact.number(18, "AWG"), fact.number(12, "AWG"))

check contains {
	"about": p.id, "is_true": false, "because": "no conductor is described that it protects",
	"remedy": "add the cable_run that it protects beside it",
} if {
	some p in input.protections
	not shared.in_each(p)
	count(p.cable_runs) == 0
}

check contains {"about": p.id, "does_not_apply": "the links between batteries are their maker's"} if {
	some p in input.protections
	shared.in_each(p)
}
