# METADATA
# title: Float voltage within the battery's range
# description: Float is held for days on end. A little too high it wears the battery day by day; too low it lets the battery discharge in the sun.
# custom:
#   grade: fix
#   each: chargers
#   source: maker's data sheet
#   remedy: program the float voltage of the battery's data sheet, times the batteries in series
package codebooks.limits.float

check contains {
	"about": c.id, "is": c.float_per_battery, "between": [c.bank.battery.float_min, c.bank.battery.float_max],
} if some c in input.chargers
