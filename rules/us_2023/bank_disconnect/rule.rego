# METADATA
# title: A disconnect separates the bank from everything else
# description: A bank cannot be switched off inside. All ungrounded conductors need a switch, in sight of the cells where their voltage is above 60 V or where they pass a wall, floor or ceiling. Nominal voltage counts in our reading.
# custom:
#   grade: stop
#   each: banks
#   source: NEC 2023 706.15(A), 706.15(D), 480.7(A)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: put a switch rated for direct current beside the bank
package codebooks.us_2023.bank_disconnect

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "which": "switch", "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": count(b.disconnects) > 0, "because": "no switch stands in the bank's main conductors",
} if some b in input.banks

check contains {
	"about": b.id, "which": "in sight", "when": fact.all([shared.premises(input.site), fact.any(array.concat([fact.more_than(b.nominal, fact.number(60, "V"))], [r.declared.through_wall | some r in b.cable_runs]))]),
	"otherwise": "not above 60 V and through no wall, or not under this code",
	"is_true": b.declared.in_sight_disconnect, "because": "the switch is not in sight of the cells",
} if some b in input.banks
