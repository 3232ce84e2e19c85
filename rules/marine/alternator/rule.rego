# METADATA
# title: An alternator survives when a lithium bank switches off
# description: When the management system opens while the engine charges, the alternator's voltage shoots up and takes its diodes, and what else is on the line, with it.
# custom:
#   grade: fix
#   each: charge_sources
#   source: ABYC E-13 management system (loss of the bank under charge; from memory)
#   cites: [abyc_e13]
#   remedy: keep a lead battery on the alternator and charge through a converter, or fit surge protection at the alternator
package codebooks.marine.alternator

import data.codebooks.marine.shared

check contains {
	"about": e.id, "when": fact.all([shared.boat(input.site), shared.lithium(e.bank.battery), fact.no(e.declared.self_limiting)]), "otherwise": "not a boat, no lithium bank, or a source that limits itself",
	"is_true": e.declared.protected_from_loss, "because": "the loss of the bank destroys it",
} if some e in input.charge_sources
