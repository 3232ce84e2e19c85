# METADATA
# title: A raceway that several circuits share is not too full
# description: Conductors that are pulled into a raceway that is too full lose their insulation at the first bend, and cannot give off their heat. More than two conductors may fill 40 % of it. Where more than three current-carrying conductors lie together all are taken for as large as this one, and the grounding conductor is counted with them.
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 300.17; chapter 9, Tables 1, 4 and 5
#   cites: [nec_2023_memory]
#   remedy: use a larger raceway, or a second one, which takes less from the ampacity too
#   equivalent:
#     - mutant: "3 x 1.01"
#       reason: "conductors are counted whole: more than 3.03 is more than 3"
#     - mutant: 10000 x 1.01
#       reason: "it stands for more than any raceway holds"
#     - mutant: 10000 / 1.01
#       reason: "it stands for more than any raceway holds"
package codebooks.us_2023.raceway_fill

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": fact.all([shared.covered(r, input.site), fact.one_of(r.method, ["conduit", "buried"]), fact.more_than(r.grouped, fact.number(3, ""))]),
	"otherwise": "in no raceway, one that it has for itself, or not under this code",
	"is": filled(r), "at_most": fact.times([0.4, r.declared.raceway_area]),
} if some r in input.cable_runs

filled(r) := fact.plus([fact.times([r.grouped, covered(r, r.area)]), covered(r, r.grounding_size)]) if shared.on_pv(r)

# Beside the bank's conductors the grounding one is seldom described: as large as they.
filled(r) := fact.times([fact.plus([r.grouped, 1]), covered(r, r.area)]) if not shared.on_pv(r)

# With its insulation. The slack is that of shared.size, to the other side; what is
# larger than the table has no ampacity in this book either.
covered(r, bare) := fact.either(fact.at_least(fact.number(300, "kcmil"), bare),
	fact.lookup("conductor_area_5", [r.declared.cable_type, fact.times([bare, 0.995])]),
	fact.number(10000, "cm2"))
