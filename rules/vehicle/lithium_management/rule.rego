# METADATA
# title: A lithium bank has a management system that protects it in every way
# description: Too much voltage, too little, too much current, and charging in the cold each destroy a lithium battery or set it on fire. The management system must know a limit for each, at a voltage that the cells still bear, and that for cold must not lie below the cells' own.
# custom:
#   grade: fix
#   each: banks
#   source: AS/NZS 3001.2 battery management (from memory, as the voltages of cells)
#   cites: [as_nzs_3001_2_memory, cells]
#   remedy: use a battery whose management system protects against each; ask its maker for the figures
package codebooks.vehicle.lithium_management

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "which": "over-voltage", "when": fact.all([shared.by_as_nzs_3001(input.site), shared.lithium(b.battery)]), "otherwise": "not built by AS/NZS 3001.2, or no lithium battery",
	"is": b.battery.bms.over_voltage, "between": [b.battery.absorption_max, cells(b, "bms_cell_most")],
} if some b in input.banks

check contains {
	"about": b.id, "which": "under-voltage", "when": fact.all([shared.by_as_nzs_3001(input.site), shared.lithium(b.battery)]), "otherwise": "not built by AS/NZS 3001.2, or no lithium battery",
	"is": b.battery.bms.under_voltage, "between": [cells(b, "bms_cell_least"), b.battery.nominal],
} if some b in input.banks

check contains {
	"about": b.id, "which": "charge current", "when": fact.all([shared.by_as_nzs_3001(input.site), shared.lithium(b.battery)]), "otherwise": "not built by AS/NZS 3001.2, or no lithium battery",
	"is": b.battery.bms.charge_cutoff, "at_most": b.battery.short_circuit,
} if some b in input.banks

check contains {
	"about": b.id, "which": "discharge current", "when": fact.all([shared.by_as_nzs_3001(input.site), shared.lithium(b.battery)]), "otherwise": "not built by AS/NZS 3001.2, or no lithium battery",
	"is": b.battery.bms.discharge_cutoff, "at_most": b.battery.short_circuit,
} if some b in input.banks

check contains {
	"about": b.id, "which": "cold", "when": fact.all([shared.by_as_nzs_3001(input.site), shared.lithium(b.battery)]), "otherwise": "not built by AS/NZS 3001.2, or no lithium battery",
	"is": b.battery.bms.cold_charge_cutoff, "at_least": b.battery.charge_above,
} if some b in input.banks

cells(b, table) := fact.times([b.battery.cells, fact.lookup(table, [b.battery.chemistry])])
