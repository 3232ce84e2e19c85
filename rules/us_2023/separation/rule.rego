# METADATA
# title: PV circuits share no raceway with others
# description: Who opens a box of house wiring must not find conductors in it that no breaker of the house makes dead.
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 690.31(B)
#   cites: [nec_2023]
#   remedy: use a raceway of their own, or one with a divider
package codebooks.us_2023.separation

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is_true": fact.no(r.declared.shares_raceway), "because": "it shares a raceway with circuits that are not PV",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "not in a PV circuit"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}
