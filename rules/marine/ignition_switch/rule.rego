# METADATA
# title: No switch that sparks among petrol vapor
# description: Petrol vapor lies in the bilge, and a battery switch that is opened lights it as a fuse does.
# custom:
#   grade: stop
#   each: disconnects
#   source: 33 CFR 183.410, each electrical component; ISO 8846 and SAE J1171 test it
#   cites: [cfr_183]
#   remedy: move it out of the space, or use one that is ignition-protected
package codebooks.marine.ignition_switch

import data.codebooks.marine.shared

check contains {
	"about": d.id, "when": fact.all([shared.boat(input.site), input.site.declared.petrol, d.declared.petrol_space]), "otherwise": "not in a petrol space of a boat",
	"is_true": d.declared.ignition_protected, "because": "it is not ignition-protected",
} if some d in input.disconnects
