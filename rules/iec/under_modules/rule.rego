# METADATA
# title: Cables under panels are judged at 70 degC
# description: Behind a panel in the sun the air is far hotter than in the shade. A cable that runs there, or touches panels, is taken for one in air of 70 degC at least.
# custom:
#   grade: fix
#   each: cable_runs
#   source: IEC 60364-7-712 712.522, 70 degC (from memory); capacity by IEC 60364-5-52 523
#   cites: [iec_60364_7_712_memory, iec_60364_5_52]
#   remedy: lead the cable away from the panels, or use a larger one
#   equivalent:
#     - mutant: "70 / 1.01"
#       reason: "the tables have no row between 65 and 70 degC, and what lies between two takes the hotter"
package codebooks.iec.under_modules

import data.codebooks.iec.shared

check contains {
	"about": r.id, "when": r.declared.under_modules, "otherwise": "it does not run under panels",
	"is": fact.largest(array.concat([shared.design_current(r)], [p.rating | some p in r.protections])),
	"at_most": shared.capacity_at(r, fact.largest([r.ambient, fact.number(70, "degC")])),
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "it is no conductor of the array"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}
