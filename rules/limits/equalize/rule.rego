# METADATA
# title: Equalizing only where the battery bears it
# description: Equalizing overcharges on purpose, to stir and even out flooded cells. Lithium cells are damaged by it and gel cells lose water for good.
# custom:
#   grade: stop
#   each: chargers
#   source: maker's data sheet; common practice
#   remedy: switch equalizing off, or program the battery's own equalizing voltage
package codebooks.limits.equalize

check contains {
	"about": c.id, "which": "chemistry", "when": fact.one_of(c.bank.battery.chemistry, ["gel", "lifepo4", "nmc", "sodium_ion"]),
	"otherwise": "a flooded or AGM battery may be equalized where its maker says so",
	"is_true": fact.no(c.settings.equalize), "because": "equalizing is on, and this chemistry never bears it",
} if some c in input.chargers

check contains {
	"about": c.id, "which": "voltage",
	"when": fact.all([fact.one_of(c.bank.battery.chemistry, ["flooded", "agm"]), c.settings.equalize]),
	"otherwise": "equalizing is off, or not for this chemistry",
	"is": c.equalize_per_battery, "at_most": c.bank.battery.equalize_max,
} if some c in input.chargers
