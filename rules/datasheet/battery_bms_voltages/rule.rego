# METADATA
# title: Management system opens above absorption and below the discharge floor
# description: Its limits are the last line. Inside the working range they would be the everyday switch.
# custom:
#   grade: fix
#   each: batteries
#   source: maker's data sheet
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.battery_bms_voltages

check contains {
	"about": b.id, "which": "over-voltage", "when": managed(b), "otherwise": "a lead battery has no management system",
	"is": b.bms.over_voltage, "at_least": b.absorption_max,
} if some b in input.batteries

check contains {
	"about": b.id, "which": "under-voltage", "when": managed(b), "otherwise": "a lead battery has no management system",
	"is": b.bms.under_voltage, "at_most": b.discharge_voltage_min,
} if some b in input.batteries

managed(b) := fact.one_of(b.chemistry, ["lifepo4", "nmc", "sodium_ion"])
