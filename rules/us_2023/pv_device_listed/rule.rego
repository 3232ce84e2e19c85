# METADATA
# title: Devices in PV circuits are listed for PV
# description: Photovoltaic fuses and breakers clear the small fault currents that an array gives; a device listed for dc alone may not.
# custom:
#   grade: fix
#   each: protections
#   source: NEC 2023 690.9(B)
#   cites: [nec_2023]
#   remedy: use a gPV fuse or a breaker listed for PV
package codebooks.us_2023.pv_device_listed

import data.codebooks.us_2023.shared

check contains {
	"about": p.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is_true": fact.any([fact.all([fact.one_of(p.kind, ["fuse"]), fact.one_of(p.class, ["gPV"])]), p.declared.pv_listed]), "because": "the device is listed for dc, not for PV",
} if {
	some p in input.protections
	shared.on_pv(p)
}

check contains {"about": p.id, "does_not_apply": "not in a PV circuit"} if {
	some p in input.protections
	not shared.on_pv(p)
}
