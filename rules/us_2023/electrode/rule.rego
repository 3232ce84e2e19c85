# METADATA
# title: There is a grounding electrode, and its conductor is large enough
# description: The conductor of a grounded dc system to its electrode is no smaller than the largest conductor of the system and than 8 AWG, and need not exceed 3/0 AWG; to a rod, pipe or plate alone 6 AWG is enough.
# custom:
#   grade: fix
#   each: grounding
#   source: NEC 2023 690.47, 250.166
#   cites: [nec_2023, nec_2023_memory]
#   remedy: drive or connect an electrode, and lead a larger conductor to it
package codebooks.us_2023.electrode

import data.codebooks.us_2023.shared

check contains {
	"about": g.id, "which": "electrode", "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": g.declared.electrode, "because": "there is no grounding electrode",
} if g := input.grounding

check contains {
	"about": g.id, "which": "conductor", "when": fact.all([shared.premises(input.site), fact.one_of(g.dc, ["negative", "positive"])]),
	"otherwise": "the dc system floats, or not under this code",
	"is": fact.times([1.005, g.declared.gec_size]), # the slack of shared.size
	"at_least": fact.either(g.declared.rod_only, fact.number(6, "AWG"), fact.smallest([largest, three_ought])),
} if {
	g := input.grounding
	largest := fact.largest(array.concat([fact.number(8, "AWG")], [r.area | some r in input.cable_runs; not shared.on_ac(r)]))
	three_ought := fact.number(-2, "AWG") # 1/0 is number 0
}
