# METADATA
# title: Tracking window ends within the absolute limit
# description: The upper end of the window and the absolute limit stand close together on a sheet and get swapped.
# custom:
#   grade: fix
#   each: controllers
#   source: maker's data sheet
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.controller_window

check contains {
	"about": c.id, "when": fact.one_of(c.kind, ["mppt"]), "otherwise": "a PWM controller has no tracking window",
	"is": c.mppt_voltage_max, "at_most": c.pv_voltage_max,
} if some c in input.controllers
