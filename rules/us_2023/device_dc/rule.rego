# METADATA
# title: Fuses and breakers are listed for direct current
# description: A direct-current arc does not go out by itself. A device for alternating current alone may burn instead of opening.
# custom:
#   grade: stop
#   each: protections
#   waivable: false
#   source: NEC 2023 690.9(B), 706.31(C)
#   cites: [nec_2023]
#   remedy: use a device listed for direct current
package codebooks.us_2023.device_dc

import data.codebooks.us_2023.shared

check contains {
	"about": x.id, "when": shared.covered(x, input.site), "otherwise": "not under this code",
	"is_true": x.dc_rated, "because": "the device is not listed for direct current",
} if {
	some x in input.protections
	not shared.on_ac(x)
}

check contains {"about": x.id, "does_not_apply": "on the AC side"} if {
	some x in input.protections
	shared.on_ac(x)
}
