# METADATA
# title: A charger on shore power is separated from the mains, behind a residual-current device
# description: A charger without a transformer puts the mains on the bank and on every fitting that is bonded to it, and on the water around the boat. A device of 30 mA ends what leaks.
# custom:
#   grade: fix
#   each: charge_sources
#   source: "ABYC A-31, chargers that separate; ABYC E-11 11.11, 30 mA at the inlet (both from memory; ISO 13297 asks for 30 mA too)"
#   cites: [abyc_memory]
#   remedy: use a charger made for boats, with a transformer; fit a two-pole residual-current device of 30 mA at the inlet
package codebooks.marine.shore_power

import data.codebooks.marine.shared

check contains {
	"about": e.id, "which": "separation", "when": fact.all([shared.boat(input.site), e.declared.shore_power]), "otherwise": "not a boat, or not on shore power",
	"is_true": e.declared.mains_separated, "because": "nothing separates the bank from the mains",
} if some e in input.charge_sources

check contains {
	"about": e.id, "which": "residual current", "when": fact.all([shared.boat(input.site), e.declared.shore_power]), "otherwise": "not a boat, or not on shore power",
	"is": e.declared.residual_current, "between": [fact.number(5, "mA"), fact.number(30, "mA")],
} if some e in input.charge_sources
