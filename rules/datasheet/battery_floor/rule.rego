# METADATA
# title: Lowest voltage as its chemistry has it, and below the nominal one
# description: Cut-offs are set by this figure. For one cell it lies at 1.6 to 2.0 V for lead and 2.0 to 3.2 V for iron phosphate.
# custom:
#   grade: fix
#   each: batteries
#   source: common practice, from memory
#   cites: [cells]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.battery_floor

check contains {
	"about": b.id, "is": b.discharge_voltage_min,
	"between": [fact.times([b.cells, fact.lookup("cell_floor_least", [b.chemistry])]), b.nominal],
} if some b in input.batteries
