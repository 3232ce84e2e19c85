# METADATA
# title: Nominal voltage agrees with cells and chemistry
# description: "A battery has a whole number of cells, each with its chemistry's voltage: 2 V for lead, 3.2 V for iron phosphate. Settings are judged by this figure."
# custom:
#   grade: fix
#   each: batteries
#   source: common practice, from memory
#   cites: [cells]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.battery_nominal

check contains {
	"about": b.id, "is": fact.ratio(b.nominal, b.cells),
	"between": [fact.lookup("cell_nominal_least", [b.chemistry]), fact.lookup("cell_nominal_most", [b.chemistry])],
} if some b in input.batteries
