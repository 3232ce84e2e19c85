# METADATA
# title: A lead bank's temperature is measured at the bank
# description: Compensation by the controller's own temperature is wrong by as much as the controller is warmer than the bank.
# custom:
#   grade: fix
#   each: chargers
#   source: common practice
#   remedy: fit the sensor on a battery in the middle of the bank
package codebooks.limits.temperature_sensor

import data.codebooks.limits.shared

check contains {
	"about": c.id, "when": shared.lead(c.bank.battery), "otherwise": "a lithium battery is not compensated; cold charging has its own rule",
	"is_true": c.settings.bank_temperature_sensor, "because": "no temperature sensor is fitted at the bank",
} if some c in input.chargers
