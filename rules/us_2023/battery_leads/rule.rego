# METADATA
# title: The fuse of each string of batteries protects its leads
# description: "When one string of batteries fails, all others feed the fault through its leads. Its fuse is no larger than they bear, or the next standard size. The leads are often the batteries' own and no run of the design: their ampacity is declared."
# custom:
#   grade: stop
#   each: banks
#   waivable: false
#   source: NEC 2023 240.4(B), 240.6(A), 706.31(A)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use smaller fuses, or larger leads between the batteries and the bus
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "strings are counted whole: more than 1.01 is more than 1"
#     - mutant: "1 x 1.01 #2"
#       reason: "strings are counted whole: more than 1.01 is more than 1"
package codebooks.us_2023.battery_leads

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "when": fact.all([shared.premises(input.site), fact.more_than(b.parallel, 1)]), "otherwise": "one string, whose leads are the main ones, or not under this code",
	"is": p.rating, "at_most": largest(p, b.declared.leads_ampacity),
} if {
	some b in input.banks
	some p in b.protections
	shared.in_each(p)
}

check contains {
	"about": b.id, "when": fact.all([shared.premises(input.site), fact.more_than(b.parallel, 1)]), "otherwise": "one string, whose leads are the main ones, or not under this code",
	"is_true": false, "because": "no fuse stands in each string of batteries, and the others feed a fault in its leads",
} if {
	some b in input.banks
	count([p | some p in b.protections; shared.in_each(p)]) == 0
}

largest(p, bears) := fact.either(fact.at_least(fact.number(800, "A"), bears), fact.lookup("standard_240_6", [p.kind, bears]), bears)
