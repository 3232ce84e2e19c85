# METADATA
# title: PV disconnects may be opened under load, or isolate small currents alone
# description: What is opened under load draws an arc. An isolating device, a plug or a fuse holder, serves equipment up to 30 A of maximum current and is marked not to be opened under load.
# custom:
#   grade: stop
#   each: disconnects
#   source: NEC 2023 690.13, 690.15(A), 690.15(B)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a switch that may be opened under load
package codebooks.us_2023.disconnect_load_break

import data.codebooks.us_2023.shared

check contains {
	"about": d.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is_true": fact.any([d.load_break, fact.all([d.declared.isolating_only, fact.at_least(fact.number(30, "A"), shared.maximum_current(d))])]),
	"because": "the switch may not be opened under load, and is no isolating device for 30 A or less", "also": [shared.maximum_current(d)],
} if {
	some d in input.disconnects
	shared.on_pv(d)
}

check contains {"about": d.id, "does_not_apply": "not in a PV circuit"} if {
	some d in input.disconnects
	not shared.on_pv(d)
}
