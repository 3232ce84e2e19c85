# METADATA
# title: Charge rate of a flooded bank as it likes it
# description: Too little current does not stir the acid, too much boils it. Other batteries go by their data sheet.
# custom:
#   grade: advise
#   each: banks
#   source: common practice
#   remedy: set another charge current, or choose another size of bank
package codebooks.practice.charge_rate

check contains {
	"about": b.id, "when": fact.one_of(b.battery.chemistry, ["flooded"]), "otherwise": "not a flooded bank: limits.bank_charge",
	"is": b.charge_rate, "between": [input.params.flooded_charge_least, input.params.flooded_charge_most],
} if some b in input.banks
