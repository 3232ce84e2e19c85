# METADATA
# title: Absorption voltage no higher than the battery bears
# description: Too high an absorption voltage dries out and heats a lead battery and breaks down a lithium one. The classic cause is the old battery's preset.
# custom:
#   grade: stop
#   each: chargers
#   waivable: false
#   source: maker's data sheet
#   remedy: program the absorption voltage of the battery's data sheet, times the batteries in series
package codebooks.limits.absorption_ceiling

check contains {
	"about": c.id, "is": c.absorption_per_battery, "at_most": c.bank.battery.absorption_max,
} if some c in input.chargers
