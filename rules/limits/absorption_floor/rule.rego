# METADATA
# title: Absorption voltage high enough to fill the battery
# description: "Too low an absorption voltage never fills the battery: lead sulfates, lithium cells drift apart unbalanced."
# custom:
#   grade: fix
#   each: chargers
#   source: maker's data sheet
#   remedy: program the absorption voltage of the battery's data sheet, times the batteries in series
package codebooks.limits.absorption_floor

check contains {
	"about": c.id, "is": c.absorption_per_battery, "at_least": c.bank.battery.absorption_min,
} if some c in input.chargers
