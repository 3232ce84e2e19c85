# METADATA
# title: Sun does not charge a lithium battery that is too cold
# description: "Below its lowest charging temperature a lithium cell plates metal at any current, for good. Where a data sheet does not mention protection there is none: either the battery's own system stops charging, or the controller does."
# custom:
#   grade: stop
#   each: chargers
#   waivable: false
#   source: "maker's data sheet; common practice (iron phosphate: 0 degC at the cell)"
#   remedy: program the controller's cold cut-off, with its sensor on the battery, or use batteries that stop charging themselves
package codebooks.limits.cold_charging

import data.codebooks.limits.shared

check contains {
	"about": c.id, "when": fact.all([shared.managed(c.bank.battery), fact.more_than(c.bank.battery.charge_above, c.bank.coldest)]),
	"otherwise": "a lead battery, or a bank that never gets so cold",
	"is_true": fact.any([
		fact.at_least(c.bank.battery.bms.cold_charge_cutoff, c.bank.battery.charge_above),
		fact.all([c.settings.bank_temperature_sensor, fact.at_least(c.settings.cold_charge_cutoff, c.bank.battery.charge_above)]),
	]),
	"because": "neither the battery nor the controller stops charging before it is too cold",
	"also": [c.settings.cold_charge_cutoff, c.bank.battery.bms.cold_charge_cutoff, c.bank.battery.charge_above, c.bank.coldest],
} if some c in input.chargers
