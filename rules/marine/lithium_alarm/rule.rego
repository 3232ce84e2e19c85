# METADATA
# title: An alarm warns before a lithium bank switches off
# description: A management system that opens without a word takes the lights, the radio and the autopilot with it.
# custom:
#   grade: advise
#   each: banks
#   source: ABYC E-13 management system (warning before it switches off)
#   cites: [abyc_e13]
#   remedy: fit an alarm at the helm that sounds before the management system opens
package codebooks.marine.lithium_alarm

import data.codebooks.marine.shared

check contains {
	"about": b.id, "when": shared.large_lithium(b), "otherwise": "not a boat, or no lithium bank of the size that the standards speak of",
	"is_true": b.declared.pre_alarm, "because": "nothing warns before it switches off",
} if some b in input.banks
