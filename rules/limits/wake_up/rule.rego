# METADATA
# title: Controller wakes a bank that has switched itself off
# description: After a dark week the battery's own system switches off, and most controllers then see no battery and do nothing, in full sun.
# custom:
#   grade: advise
#   each: chargers
#   source: maker's data sheet
#   remedy: choose a controller that wakes such batteries, or keep a second way to wake them
package codebooks.limits.wake_up

import data.codebooks.limits.shared

check contains {
	"about": c.id, "when": shared.managed(c.bank.battery), "otherwise": "a lead battery does not switch itself off",
	"is_true": c.controller.wakes_empty_bank, "because": "the controller does not wake a bank that has switched itself off",
} if some c in input.chargers
