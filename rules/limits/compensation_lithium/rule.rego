# METADATA
# title: No temperature compensation on a lithium battery
# description: "Compensation is made for lead: in the cold it raises the voltage. A lithium battery charged like that is overcharged just when it bears it least."
# custom:
#   grade: stop
#   each: chargers
#   source: common practice
#   remedy: set temperature compensation to 0 mV/K
package codebooks.limits.compensation_lithium

import data.codebooks.limits.shared

check contains {
	"about": c.id, "when": shared.managed(c.bank.battery), "otherwise": "a lead battery is compensated: limits.compensation_lead",
	"is": c.settings.temperature_compensation, "equals": fact.number(0, "V/K"),
} if some c in input.chargers
