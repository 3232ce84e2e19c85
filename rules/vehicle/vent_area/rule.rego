# METADATA
# title: Openings large enough for a lead bank's gas
# description: The openings at top and bottom must let enough air pass. One code names an area, which suits some 65 Ah of flooded batteries; for the other, whose formula was not found, that of stationary batteries stands in.
# custom:
#   grade: fix
#   each: banks
#   source: "NEC 552.10(D): 1100 mm2 at top and bottom; AS/NZS 3001.2 lead batteries, area by the formula of IEC 62485-2 in place of its own"
#   cites: [nec_552, as_nzs_3001_2, iec_62485_2]
#   remedy: enlarge the openings, or charge at a lower voltage
package codebooks.vehicle.vent_area

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "which": "NEC 552", "when": fact.all([shared.by_nec_552(input.site), shared.lead(b.battery)]), "otherwise": "not built by NEC article 552, or no lead battery",
	"is": b.declared.vent_area, "at_least": fact.number(1100, "mm2"),
} if some b in input.banks

check contains {
	"about": b.id, "which": "AS/NZS 3001.2", "when": fact.all([shared.by_as_nzs_3001(input.site), shared.lead(b.battery)]), "otherwise": "not built by AS/NZS 3001.2, or no lead battery",
	"is": b.declared.vent_area, "at_least": shared.opening(b),
} if {
	some b in input.banks
	count(shared.sources(b)) > 0
}
