# METADATA
# title: An alternator survives when a lithium bank switches off
# description: When the management system opens while the engine charges, the alternator's voltage shoots up and takes its diodes, and what else is on the line, with it.
# custom:
#   grade: fix
#   each: charge_sources
#   source: common practice
#   remedy: charge through a converter and leave the starter battery on the alternator, or fit surge protection at the alternator
package codebooks.vehicle.alternator

import data.codebooks.vehicle.shared

check contains {
	"about": e.id, "when": fact.all([shared.vehicle(input.site), shared.lithium(e.bank.battery), fact.no(e.declared.self_limiting)]), "otherwise": "not a vehicle, no lithium bank, or a source that limits itself",
	"is_true": e.declared.protected_from_loss, "because": "the loss of the bank destroys it",
} if some e in input.charge_sources
