# METADATA
# title: A charger on outside mains is separated from it, behind a residual-current device
# description: A charger without a transformer puts the mains on the bank, and the body of the vehicle with it. A device of 30 mA at the inlet ends what leaks while somebody stands on wet grass with a hand on the door.
# custom:
#   grade: fix
#   each: charge_sources
#   source: "HD 60364-7-721 residual current, 30 mA at the inlet (from memory); chargers that separate, common practice"
#   cites: [hd_60364_7_721]
#   remedy: use a charger with a transformer; fit a two-pole residual-current device of 30 mA at the inlet
package codebooks.vehicle.shore_power

import data.codebooks.vehicle.shared

check contains {
	"about": e.id, "which": "separation", "when": fact.all([shared.vehicle(input.site), e.declared.shore_power]), "otherwise": "not a vehicle, or not on outside mains",
	"is_true": e.declared.mains_separated, "because": "nothing separates the bank from the mains",
} if some e in input.charge_sources

check contains {
	"about": e.id, "which": "residual current", "when": fact.all([shared.vehicle(input.site), e.declared.shore_power]), "otherwise": "not a vehicle, or not on outside mains",
	"is": e.declared.residual_current, "between": [fact.number(5, "mA"), fact.number(30, "mA")],
} if some e in input.charge_sources
