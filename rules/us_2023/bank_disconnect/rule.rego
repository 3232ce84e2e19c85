# METADATA
# title: A disconnect separates the bank from everything else
# description: A bank cannot be switched off inside. A breaker in its main that current may pass both ways serves as the switch; a fuse does not. All ungrounded conductors need a switch, in sight of the cells where their voltage is above 60 V or where they pass a wall, floor or ceiling. Nominal voltage counts in our reading.
# custom:
#   grade: stop
#   each: banks
#   source: NEC 2023 706.15(A), 706.15(D), 480.7(A)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: put a switch rated for direct current beside the bank, or a breaker that is not polarized into its main
package codebooks.us_2023.bank_disconnect

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "which": "switch", "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": fact.any(array.concat([count(b.disconnects) > 0], breakers(b))), "because": "no switch and no two-way breaker stands in the bank's main conductors",
} if some b in input.banks

check contains {
	"about": b.id, "which": "in sight", "when": fact.all([shared.premises(input.site), fact.any(array.concat([fact.more_than(b.nominal, fact.number(60, "V"))], [r.declared.through_wall | some r in b.cable_runs]))]),
	"otherwise": "not above 60 V and through no wall, or not under this code",
	"is_true": b.declared.in_sight_disconnect, "because": "the switch is not in sight of the cells",
} if some b in input.banks

# us_2023.device_poles asks how many poles it opens.
breakers(b) := [fact.all([fact.one_of(p.kind, ["breaker"]), fact.no(p.polarized)]) | some p in b.protections; not shared.in_each(p)]
