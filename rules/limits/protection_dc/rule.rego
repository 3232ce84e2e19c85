# METADATA
# title: Fuses and breakers are rated for direct current
# description: A direct-current arc does not go out by itself as an alternating one does a hundred times a second. A device made for AC burns on, inside a box that should have stopped the fire.
# custom:
#   grade: stop
#   each: protections
#   waivable: false
#   source: common practice; IEC 60947
#   cites: [iec_60947]
#   remedy: use a fuse or breaker that its maker rates for direct current
package codebooks.limits.protection_dc

import data.codebooks.limits.shared

check contains {"about": p.id, "is_true": p.dc_rated, "because": "it is not rated for direct current"} if {
	some p in input.protections
	not shared.on_ac(p)
}

check contains {"about": p.id, "does_not_apply": "on the AC side"} if {
	some p in input.protections
	shared.on_ac(p)
}
