# METADATA
# title: Lead batteries vent outside, away from where people live
# description: Lead batteries give off hydrogen as they charge; in a cabin it gathers above the beds. Every school asks for a way out, and for a wall toward the cabin; and nothing in the compartment may light it.
# custom:
#   grade: stop
#   each: banks
#   source: AS/NZS 3001.2 lead batteries; NEC 552.10(D); RVIA LV vented box
#   cites: [as_nzs_3001_2, nec_552, rvia_lv]
#   remedy: put the batteries into a compartment that is tight toward the cabin and vented at top and bottom
package codebooks.vehicle.lead_vented

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "which": "vented", "when": fact.all([shared.vehicle(input.site), shared.lead(b.battery)]), "otherwise": "not a vehicle, or no lead battery",
	"is_true": b.declared.vented_outside, "because": "its gas does not get outside",
} if some b in input.banks

check contains {
	"about": b.id, "which": "sealed", "when": fact.all([shared.vehicle(input.site), shared.lead(b.battery)]), "otherwise": "not a vehicle, or no lead battery",
	"is_true": b.declared.sealed_from_cabin, "because": "its gas gets to where people live",
} if some b in input.banks

check contains {
	"about": b.id, "which": "sparks", "when": fact.all([shared.vehicle(input.site), shared.lead(b.battery)]), "otherwise": "not a vehicle, or no lead battery",
	"is_true": b.declared.spark_free, "because": "what sparks or burns shares its compartment",
} if some b in input.banks
