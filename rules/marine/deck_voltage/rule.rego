# METADATA
# title: PV voltage on open decks may be touched
# description: On a wet deck, with bare feet and chafed cable, more than 60 V of direct current is too much.
# custom:
#   grade: advise
#   each: pv_inputs
#   source: common practice aboard; no clause asks for it
#   remedy: put panels in parallel, not in series
package codebooks.marine.deck_voltage

import data.codebooks.marine.shared

check contains {
	"about": i.id, "when": shared.boat(input.site), "otherwise": "not a boat",
	"is": i.voc_cold, "at_most": input.params.deck_voltage_max,
} if some i in input.pv_inputs
