# METADATA
# title: Switches are rated for direct current
# description: A direct-current arc does not go out by itself as an alternating one does a hundred times a second. A device made for AC burns on, inside a box that should have stopped the fire.
# custom:
#   grade: stop
#   each: disconnects
#   waivable: false
#   source: common practice; IEC 60947
#   cites: [iec_60947]
#   remedy: use a switch that its maker rates for direct current
package codebooks.limits.disconnect_dc

import data.codebooks.limits.shared

check contains {"about": d.id, "is_true": d.dc_rated, "because": "it is not rated for direct current"} if {
	some d in input.disconnects
	not shared.on_ac(d)
}

check contains {"about": d.id, "does_not_apply": "on the AC side"} if {
	some d in input.disconnects
	shared.on_ac(d)
}
