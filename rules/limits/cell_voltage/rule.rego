# METADATA
# title: Highest voltage a cell within its chemistry's ceiling
# description: "Every source, setting and compensation counts: the highest of them is what each cell must bear. Iron-phosphate cells take 3.65 V at most."
# custom:
#   grade: fix
#   each: banks
#   source: common practice, from memory; makers differ, and their own limits are limits.absorption_ceiling and limits.source_voltage
#   cites: [cells]
#   remedy: lower the setting that is highest, or program compensation off
package codebooks.limits.cell_voltage

import data.codebooks.limits.shared

check contains {
	"about": b.id, "when": shared.managed(b.battery), "otherwise": "a lead cell's voltage goes by its temperature: limits.absorption_ceiling",
	"is": fact.ratio(b.voltage_max, b.cells_in_series),
	"at_most": fact.lookup("cell_voltage_max", [b.battery.chemistry]),
} if some b in input.banks
