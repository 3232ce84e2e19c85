# METADATA
# title: Bank within the voltages that the standard is for
# description: "Above 50 V of direct current ISO 13297 does not speak: 16 iron-phosphate cells of 51.2 V are beyond its letter, 15 cells within. Ask the surveyor which rules he takes."
# custom:
#   grade: advise
#   each: banks
#   source: ISO 13297 scope, DC up to 50 V nominal
#   cites: [iso_13297]
#   remedy: use a lower bank voltage, or agree with the surveyor on the rules for a higher one
package codebooks.marine.voltage_scope

import data.codebooks.marine.shared

check contains {
	"about": b.id, "when": shared.boat(input.site), "otherwise": "not a boat",
	"is": b.nominal, "at_most": fact.number(50, "V"),
} if some b in input.banks
