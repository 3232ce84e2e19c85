# METADATA
# title: Lead batteries vent outboard
# description: Lead batteries give off hydrogen as they charge. Below deck it gathers under the next beam.
# custom:
#   grade: stop
#   each: banks
#   source: 33 CFR 183.420
#   cites: [cfr_183]
#   remedy: lead the gas outboard from the top of the compartment
package codebooks.marine.battery_vented

import data.codebooks.marine.shared

check contains {
	"about": b.id, "when": fact.all([shared.boat(input.site), shared.lead(b.battery)]), "otherwise": "not a boat, or no lead battery",
	"is_true": b.declared.vented, "because": "its gas stays aboard",
} if some b in input.banks
