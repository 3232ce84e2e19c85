# METADATA
# title: Controller stops for cold before the battery's own system does
# description: "A management system is the last line, not the everyday switch: when it opens, the controller loses its battery under sun."
# custom:
#   grade: advise
#   each: chargers
#   source: common practice
#   remedy: program the controller's cold cut-off a few kelvin above the battery's own
package codebooks.limits.cold_charging_first

import data.codebooks.limits.shared

check contains {
	"about": c.id, "when": fact.all([shared.managed(c.bank.battery), fact.more_than(c.bank.battery.charge_above, c.bank.coldest)]),
	"otherwise": "a lead battery, or a bank that never gets so cold",
	"is": c.settings.cold_charge_cutoff, "at_least": c.bank.battery.bms.cold_charge_cutoff,
} if some c in input.chargers
