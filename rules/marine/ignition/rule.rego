# METADATA
# title: Nothing that sparks among petrol vapor
# description: Petrol vapor is heavier than air and lies in the bilge. A fuse that opens, or a breaker, lights it; there they are ignition-protected.
# custom:
#   grade: stop
#   each: protections
#   source: 33 CFR 183.410; ISO 8846 and SAE J1171 test it
#   cites: [cfr_183]
#   remedy: move the device out of the space, or use one that is ignition-protected
package codebooks.marine.ignition

import data.codebooks.marine.shared

check contains {
	"about": p.id, "when": fact.all([shared.boat(input.site), input.site.declared.petrol, p.declared.petrol_space]), "otherwise": "not in a petrol space of a boat",
	"is_true": p.declared.ignition_protected, "because": "it is not ignition-protected",
} if some p in input.protections
