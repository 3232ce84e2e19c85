# METADATA
# title: Charger stops before the battery's own system opens
# description: If absorption lies above the management system's over-voltage, every full battery ends in a trip, and the controller loses its battery under sun.
# custom:
#   grade: fix
#   each: chargers
#   source: common practice
#   remedy: lower the absorption voltage
package codebooks.limits.absorption_below_bms

import data.codebooks.limits.shared

check contains {
	"about": c.id, "when": shared.managed(c.bank.battery), "otherwise": "a lead battery has no management system",
	"is": c.absorption_per_battery, "at_most": c.bank.battery.bms.over_voltage,
} if some c in input.chargers
