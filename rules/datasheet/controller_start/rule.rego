# METADATA
# title: Starting takes more voltage than going on
# description: A tracker starts some volts above the bank and goes on with less. Swapped, it would start and stop all day.
# custom:
#   grade: fix
#   each: controllers
#   source: maker's data sheet
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.controller_start

check contains {
	"about": c.id, "when": fact.one_of(c.kind, ["mppt"]), "otherwise": "a PWM controller has no starting voltage",
	"is": c.run_above_bank, "at_most": c.start_above_bank,
} if some c in input.controllers
