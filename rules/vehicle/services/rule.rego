# METADATA
# title: Batteries away from gas, diesel and water lines
# description: A leak of fuel or water onto a battery, or a short circuit beside a gas line, must not happen together.
# custom:
#   grade: fix
#   each: banks
#   source: AS/NZS 3001.2 services (no figure found)
#   cites: [as_nzs_3001_2]
#   remedy: move the batteries or the lines
package codebooks.vehicle.services

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "when": shared.by_as_nzs_3001(input.site), "otherwise": "not built by AS/NZS 3001.2",
	"is_true": b.declared.clear_of_services, "because": "it stands beside gas, diesel or water lines",
} if some b in input.banks
