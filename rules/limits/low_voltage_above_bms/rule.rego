# METADATA
# title: Loads are cut off before the battery's own system opens
# description: A management system that switches off for low voltage may not wake without help, and then neither load nor charger finds a battery.
# custom:
#   grade: fix
#   each: banks
#   source: common practice
#   remedy: raise the low-voltage disconnect
package codebooks.limits.low_voltage_above_bms

import data.codebooks.limits.shared

check contains {
	"about": b.id, "when": shared.managed(b.battery), "otherwise": "a lead battery has no management system",
	"is": b.low_voltage_disconnect, "at_least": fact.times([b.series, b.battery.bms.under_voltage]),
} if some b in input.banks
