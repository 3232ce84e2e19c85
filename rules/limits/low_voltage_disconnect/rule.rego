# METADATA
# title: Loads are cut off before the battery's floor
# description: A battery drawn below its floor is damaged once and for all. Something must cut the loads off, and above that floor.
# custom:
#   grade: fix
#   each: banks
#   source: maker's data sheet; common practice
#   remedy: fit a low-voltage disconnect, and set it above the battery's lowest voltage times the batteries in series
package codebooks.limits.low_voltage_disconnect

check contains {
	"about": b.id, "is": b.low_voltage_disconnect, "at_least": fact.times([b.series, b.battery.discharge_voltage_min]),
} if some b in input.banks
