# METADATA
# title: A charging source has a device at its own end
# description: Both ends of a charging conductor are sources. What does not limit its own current has a fuse or breaker inside it or close to it, besides the one at the bank.
# custom:
#   grade: fix
#   each: charge_sources
#   source: ISO 13297 12.3, inside the source or within 1.8 m of it; sources that limit themselves are exempt
#   cites: [iso_13297]
#   remedy: fit a fuse at the source, sized to its largest output
package codebooks.marine.source_device

import data.codebooks.marine.shared

check contains {
	"about": e.id, "when": fact.all([shared.boat(input.site), fact.no(e.declared.self_limiting)]), "otherwise": "not a boat, or it limits its own current",
	"is": e.declared.device_at_source, "at_most": fact.number(1.8, "m"),
} if some e in input.charge_sources
