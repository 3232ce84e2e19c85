# METADATA
# title: Controller bears the loss of its bank under sun
# description: When the battery's own system opens in full sun, the array's power has nowhere to go. Controllers not made for it fail, and pass the array's voltage on to the loads.
# custom:
#   grade: fix
#   each: chargers
#   source: maker's data sheet
#   remedy: choose a controller that bears it, or have the battery's system stop the controller first
package codebooks.limits.bank_loss

import data.codebooks.limits.shared

check contains {
	"about": c.id, "when": shared.managed(c.bank.battery), "otherwise": "a lead battery does not switch itself off",
	"is_true": c.controller.survives_bank_loss, "because": "the controller does not bear the loss of its bank under sun",
} if some c in input.chargers
