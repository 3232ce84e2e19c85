# METADATA
# title: Fuses and breakers carry their circuit for hours
# description: "1.25 for PV circuits, 1.25 more for continuous duty: 1.5625 x Isc, or 1.25 x the equipment's current. The rating must be that much; a device listed with its assembly for 100 % needs the quarter for continuous duty no more. A smaller one opens on a bright day."
# custom:
#   grade: fix
#   each: protections
#   source: NEC 2023 690.8(A)(1), 690.9(B), 210.20, 215.3, 706.31(B)
#   cites: [nec_2023]
#   remedy: take the next standard size that the conductor and the panels allow
package codebooks.us_2023.device_continuous

import data.codebooks.us_2023.shared

check contains {
	"about": p.id, "when": shared.covered(p, input.site), "otherwise": "not under this code",
	"is": p.rating, "at_least": needed(p),
} if some p in input.protections

needed(p) := fact.either(fact.at_least(p.rating, shared.continuous_current(p)), shared.continuous_current(p),
	fact.either(p.continuous_rated, shared.maximum_current(p), shared.continuous_current(p)))
