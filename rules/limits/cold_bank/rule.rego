# METADATA
# title: Lithium bank stands warm enough to be charged, or has a heater
# description: A battery that rightly refuses charge in the cold gives an empty bank on clear winter days.
# custom:
#   grade: advise
#   each: banks
#   source: common practice
#   remedy: move the bank to where it stays warm, or use batteries with a heater
package codebooks.limits.cold_bank

import data.codebooks.limits.shared

check contains {
	"about": b.id, "when": shared.managed(b.battery), "otherwise": "a lead battery is charged in the cold too, at a higher voltage",
	"is_true": fact.any([fact.at_least(b.coldest, b.battery.charge_above), b.battery.heater]),
	"because": "the bank gets colder than it may be charged at, and has no heater",
	"also": [b.coldest, b.battery.charge_above],
} if some b in input.banks
