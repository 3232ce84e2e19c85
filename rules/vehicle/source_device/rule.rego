# METADATA
# title: The charging line has a device at its other end too
# description: The line from the engine has a battery at both ends. The fuse at the auxiliary battery does not see what the starter battery feeds into a cable that is chafed along the frame.
# custom:
#   grade: fix
#   each: charge_sources
#   source: common practice; no figure found in a standard for vehicles, and a workshop may set its own
#   remedy: fit a fuse at the starter battery, sized to the line
package codebooks.vehicle.source_device

import data.codebooks.vehicle.shared

check contains {
	"about": e.id, "when": fact.all([shared.vehicle(input.site), fact.no(e.declared.self_limiting)]), "otherwise": "not a vehicle, or it limits its own current",
	"is": e.declared.device_at_source, "at_most": input.params.source_device_max,
} if some e in input.charge_sources
