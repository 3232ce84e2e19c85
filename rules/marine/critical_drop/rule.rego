# METADATA
# title: Drop to what safety hangs on within 3 %
# description: A navigation light must be seen, and a bilge pump must run, when the bank is low. Charging conductors count with them.
# custom:
#   grade: fix
#   each: cable_runs
#   source: ABYC E-11 11.14 and ISO 13297 voltage drop, 3 % at full load
#   cites: [abyc_e11, iso_13297]
#   remedy: use thicker or shorter cable, or a higher voltage
package codebooks.marine.critical_drop

import data.codebooks.marine.shared

check contains {
	"about": r.id, "when": fact.all([shared.boat(input.site), fact.any([fact.at_least(input.params.critical_drop_max, r.path_drop), l.declared.critical])]), "otherwise": "not a boat, or no safety hangs on it",
	"is": r.path_drop, "at_most": input.params.critical_drop_max,
} if {
	some r in input.cable_runs
	some l in r.loads
}

check contains {
	"about": r.id, "when": shared.boat(input.site), "otherwise": "not a boat",
	"is": r.path_drop, "at_most": input.params.critical_drop_max,
} if {
	some r in input.cable_runs
	count(array.concat(r.chargers, r.charge_sources)) > 0
}

check contains {"about": r.id, "does_not_apply": "it feeds no load by itself, and charges nothing"} if {
	some r in input.cable_runs
	count(array.flatten([r.loads, r.chargers, r.charge_sources])) == 0
}
