# METADATA
# title: Insulation bears the air around it
# description: "The tables end 10 K below what the insulation bears: in hotter air a conductor can carry next to nothing, and no ampacity that a maker gives for cooler air may stand in there."
# custom:
#   grade: fix
#   each: cable_runs
#   source: IEC 60364-5-52 523, last rows of Table B.52.14 (60 degC for insulation of 70 degC, 80 degC for 90 degC); under panels air of 70 degC by IEC 60364-7-712 712.522 (from memory)
#   cites: [iec_60364_5_52, iec_60364_7_712_memory]
#   remedy: lead the conductor through cooler air, or use insulation for more heat
#   equivalent:
#     - mutant: "80 x 1.01 #2"
#       reason: "insulation of less than 80 degC is below 80.8 degC as well"
package codebooks.iec.conductor_heat

import data.codebooks.iec.shared

check contains {
	"about": r.id, "when": fact.no(fact.one_of(r.method, ["buried", "direct_buried"])), "otherwise": "in the ground, where it is not the air that counts",
	"is": r.insulation, "at_least": needed(r),
} if some r in input.cable_runs

# Under panels the air counts as 70 degC at least, which asks for insulation of
# 80 degC; what bears 80 degC or more need not say whether it runs there.
needed(r) := fact.either(
	fact.all([fact.more_than(fact.number(80, "degC"), r.insulation), r.declared.under_modules]),
	fact.number(80, "degC"), warmer(r),
) if shared.on_pv(r)

needed(r) := warmer(r) if not shared.on_pv(r)

warmer(r) := fact.plus([r.ambient, fact.number(10, "K")])
