# METADATA
# title: Devices in PV circuits stand all in one polarity
# description: One device may protect a string's panels and conductors, in one pole; then all of the system stand in the same pole, or a fault finds a way between.
# custom:
#   grade: fix
#   each: protections
#   source: NEC 2023 690.9(C)
#   cites: [nec_2023]
#   remedy: put all PV fuses into the same pole, or use devices of two poles
package codebooks.us_2023.pv_device_pole

import data.codebooks.us_2023.shared

# Each against every one, itself too; a device of two poles goes with any.
check contains {
	"about": p.id, "which": q.id,
	"when": fact.all([shared.on_land(input.site), fact.no(fact.one_of(p.declared.pole, ["both"])), fact.no(fact.one_of(q.declared.pole, ["both"]))]),
	"otherwise": "one of the two opens both poles, or not under this code",
	"is": p.declared.pole, "equals": q.declared.pole,
} if {
	some p in input.protections
	shared.on_pv(p)
	some q in input.protections
	shared.on_pv(q)
}

check contains {"about": p.id, "does_not_apply": "not in a PV circuit"} if {
	some p in input.protections
	not shared.on_pv(p)
}
