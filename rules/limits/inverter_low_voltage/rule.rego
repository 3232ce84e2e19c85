# METADATA
# title: Inverter switches off before the battery's floor
# description: The inverter is the largest load and the one that empties a bank. Its cut-off must be one that it works down to, and must lie above the battery's floor.
# custom:
#   grade: fix
#   each: ac_outputs
#   source: maker's data sheet
#   remedy: program the low-voltage cut-off above the battery's lowest voltage times the batteries in series
package codebooks.limits.inverter_low_voltage

check contains {"about": o.id, "which": "inverter's own", "is": o.low_cutoff, "at_least": o.inverter.dc_min} if some o in input.ac_outputs

check contains {
	"about": o.id, "which": "battery's floor", "is": o.low_cutoff, "at_least": fact.times([o.bank.series, o.bank.battery.discharge_voltage_min]),
} if some o in input.ac_outputs
