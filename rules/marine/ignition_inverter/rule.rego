# METADATA
# title: No inverter that sparks among petrol vapor
# description: Petrol vapor lies in the bilge, and an inverter with relays and a fan lights it as a fuse does.
# custom:
#   grade: stop
#   each: ac_outputs
#   source: 33 CFR 183.410, each electrical component; ISO 8846 and SAE J1171 test it
#   cites: [cfr_183]
#   remedy: move it out of the space, or use one that is ignition-protected
package codebooks.marine.ignition_inverter

import data.codebooks.marine.shared

check contains {
	"about": o.id, "when": fact.all([shared.boat(input.site), input.site.declared.petrol, o.declared.petrol_space]), "otherwise": "not in a petrol space of a boat",
	"is_true": o.declared.ignition_protected, "because": "it is not ignition-protected",
} if some o in input.ac_outputs
