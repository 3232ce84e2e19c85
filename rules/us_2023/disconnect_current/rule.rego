# METADATA
# title: Disconnects carry their circuit's maximum current
# description: A switch for less than the maximum current, 1.25 x Isc of a PV circuit, overheats in the best light.
# custom:
#   grade: fix
#   each: disconnects
#   source: NEC 2023 690.8(A)(1), 690.13, 690.15, 706.15
#   cites: [nec_2023]
#   remedy: use a larger switch
package codebooks.us_2023.disconnect_current

import data.codebooks.us_2023.shared

check contains {
	"about": d.id, "when": shared.covered(d, input.site), "otherwise": "not under this code",
	"is": d.rating, "at_least": shared.maximum_current(d),
} if some d in input.disconnects
