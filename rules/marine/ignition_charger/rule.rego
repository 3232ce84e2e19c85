# METADATA
# title: No charge controller that sparks among petrol vapor
# description: Petrol vapor lies in the bilge, and a controller with relays lights it as a fuse does.
# custom:
#   grade: stop
#   each: chargers
#   source: 33 CFR 183.410, each electrical component; ISO 8846 and SAE J1171 test it
#   cites: [cfr_183]
#   remedy: move it out of the space, or use one that is ignition-protected
package codebooks.marine.ignition_charger

import data.codebooks.marine.shared

check contains {
	"about": c.id, "when": fact.all([shared.boat(input.site), input.site.declared.petrol, c.declared.petrol_space]), "otherwise": "not in a petrol space of a boat",
	"is_true": c.declared.ignition_protected, "because": "it is not ignition-protected",
} if some c in input.chargers
