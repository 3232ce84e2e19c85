# METADATA
# title: Isolating means stand within 3 m of their equipment
# description: Who works on a controller must see that its circuit is open. The code, as remembered, takes 10 ft; one summary prints 3 ft.
# custom:
#   grade: advise
#   each: disconnects
#   source: NEC 2023 690.15(D)
#   cites: [nec_2023_memory]
#   remedy: place the switch in sight of the controller, within 3 m
package codebooks.us_2023.disconnect_distance

import data.codebooks.us_2023.shared

check contains {
	"about": d.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is": d.declared.distance_to_equipment, "at_most": fact.number(3, "m"),
} if {
	some d in input.disconnects
	shared.on_pv(d)
}

check contains {"about": d.id, "does_not_apply": "not in a PV circuit"} if {
	some d in input.disconnects
	not shared.on_pv(d)
}
