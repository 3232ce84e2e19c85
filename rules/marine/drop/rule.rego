# METADATA
# title: Drop to other loads within 10 %
# description: Volts lost in cable are light and power lost.
# custom:
#   grade: advise
#   each: cable_runs
#   source: ABYC E-11 11.14 and ISO 13297 voltage drop, 10 % at full load (ISO from memory)
#   cites: [abyc_e11, iso_13297_memory]
#   remedy: use thicker or shorter cable, or a higher voltage
package codebooks.marine.drop

import data.codebooks.marine.shared

check contains {
	"about": r.id, "when": fact.all([shared.boat(input.site), fact.any([fact.at_least(input.params.drop_max, r.path_drop), fact.no(l.declared.critical)])]), "otherwise": "not a boat, or safety hangs on it",
	"is": r.path_drop, "at_most": input.params.drop_max,
} if {
	some r in input.cable_runs
	some l in r.loads
}

check contains {"about": r.id, "does_not_apply": "it feeds no load by itself"} if {
	some r in input.cable_runs
	count(r.loads) == 0
}
