# METADATA
# title: Disconnects are rated for direct current
# description: "A direct-current arc does not go out by itself: a switch for alternating current alone burns when it is opened under load."
# custom:
#   grade: stop
#   each: disconnects
#   waivable: false
#   source: NEC 2023 690.13, 706.15
#   cites: [nec_2023]
#   remedy: use a switch rated for direct current
package codebooks.us_2023.disconnect_dc

import data.codebooks.us_2023.shared

check contains {
	"about": x.id, "when": shared.covered(x, input.site), "otherwise": "not under this code",
	"is_true": x.dc_rated, "because": "the switch is not rated for direct current",
} if {
	some x in input.disconnects
	not shared.on_ac(x)
}

check contains {"about": x.id, "does_not_apply": "on the AC side"} if {
	some x in input.disconnects
	shared.on_ac(x)
}
