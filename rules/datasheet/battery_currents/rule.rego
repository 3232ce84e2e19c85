# METADATA
# title: Management system opens above the permitted currents
# description: A system that opens below the current that the sheet permits makes that current unusable; more often one of the two is another model's.
# custom:
#   grade: fix
#   each: batteries
#   source: maker's data sheet
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.battery_currents

check contains {
	"about": b.id, "which": "charge", "when": managed(b), "otherwise": "a lead battery has no management system",
	"is": b.charge_current_max, "at_most": b.bms.charge_cutoff,
} if some b in input.batteries

check contains {
	"about": b.id, "which": "discharge", "when": managed(b), "otherwise": "a lead battery has no management system",
	"is": b.discharge_current_max, "at_most": b.bms.discharge_cutoff,
} if some b in input.batteries

managed(b) := fact.one_of(b.chemistry, ["lifepo4", "nmc", "sodium_ion"])
