# METADATA
# title: Bank accepts its sources with one parallel string of batteries lost
# description: When one string's fuse or management system opens, the others take its current. If that is too much for them they open one after the other, and the controller stands without a battery.
# custom:
#   grade: fix
#   each: banks
#   source: common practice
#   remedy: lower the chargers' current settings, or put more batteries in parallel
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "strings are counted whole: more than 1.01 is more than 1"
package codebooks.limits.bank_charge_one_lost

check contains {
	"about": b.id, "when": fact.more_than(b.parallel, 1), "otherwise": "one string only: its loss is the loss of the bank (limits.bank_loss)",
	"is": b.charge_current_total, "at_most": b.charge_current_accepted_one_lost,
} if some b in input.banks
