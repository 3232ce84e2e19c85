# METADATA
# title: Absorption voltage within the chemistry's ceiling
# description: Chargers are set by this figure. A sheet of another battery, or a whole bank's voltage given for one battery, overcharges it.
# custom:
#   grade: fix
#   each: batteries
#   source: common practice, from memory; makers differ
#   cites: [cells]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.battery_absorption

check contains {
	"about": b.id, "is": fact.ratio(b.absorption_max, b.cells), "at_most": fact.lookup("cell_absorption_most", [b.chemistry]),
} if some b in input.batteries
