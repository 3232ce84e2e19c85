# METADATA
# title: A lithium bank has a management system that protects it in every way
# description: Too much voltage, too little, too much current, and charging in the cold each destroy a lithium battery or set it on fire. The management system must know a limit for each, at a voltage that the cells still bear, and that for cold must not lie below the cells' own.
# custom:
#   grade: fix
#   each: banks
#   source: "ABYC E-13 management system: voltage, current, temperature; voltages of cells from memory"
#   cites: [abyc_e13, cells]
#   remedy: use a battery whose management system protects against each; ask its maker for the figures
package codebooks.marine.lithium_management

import data.codebooks.marine.shared

check contains {"about": b.id, "which": "over-voltage", "when": shared.large_lithium(b), "otherwise": "not a boat, or no lithium bank of the size that the standards speak of", "is": b.battery.bms.over_voltage, "between": [b.battery.absorption_max, cells(b, "bms_cell_most")]} if some b in input.banks

check contains {"about": b.id, "which": "under-voltage", "when": shared.large_lithium(b), "otherwise": "not a boat, or no lithium bank of the size that the standards speak of", "is": b.battery.bms.under_voltage, "between": [cells(b, "bms_cell_least"), b.battery.nominal]} if some b in input.banks

check contains {"about": b.id, "which": "charge current", "when": shared.large_lithium(b), "otherwise": "not a boat, or no lithium bank of the size that the standards speak of", "is": b.battery.bms.charge_cutoff, "at_most": b.battery.short_circuit} if some b in input.banks

check contains {"about": b.id, "which": "discharge current", "when": shared.large_lithium(b), "otherwise": "not a boat, or no lithium bank of the size that the standards speak of", "is": b.battery.bms.discharge_cutoff, "at_most": b.battery.short_circuit} if some b in input.banks

check contains {"about": b.id, "which": "cold", "when": shared.large_lithium(b), "otherwise": "not a boat, or no lithium bank of the size that the standards speak of", "is": b.battery.bms.cold_charge_cutoff, "at_least": b.battery.charge_above} if some b in input.banks

cells(b, table) := fact.times([b.battery.cells, fact.lookup(table, [b.battery.chemistry])])
