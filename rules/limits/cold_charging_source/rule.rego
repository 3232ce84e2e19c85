# METADATA
# title: No other source charges a lithium battery that is too cold
# description: An engine started on a frosty morning charges at once and hard. The controller's cold cut-off does not stop it; the battery's own system or the source itself must.
# custom:
#   grade: stop
#   each: charge_sources
#   waivable: false
#   source: "maker's data sheet; common practice (iron phosphate: 0 degC at the cell)"
#   remedy: use batteries that stop charging themselves, or a source with a cold cut-off at the battery
package codebooks.limits.cold_charging_source

import data.codebooks.limits.shared

check contains {
	"about": e.id, "when": fact.all([shared.managed(e.bank.battery), fact.more_than(e.bank.battery.charge_above, e.bank.coldest)]),
	"otherwise": "a lead battery, or a bank that never gets so cold",
	"is_true": fact.any([
		fact.at_least(e.bank.battery.bms.cold_charge_cutoff, e.bank.battery.charge_above),
		fact.at_least(e.cold_charge_cutoff, e.bank.battery.charge_above),
	]),
	"because": "neither the battery nor the source stops charging before it is too cold",
	"also": [e.cold_charge_cutoff, e.bank.battery.bms.cold_charge_cutoff, e.bank.battery.charge_above, e.bank.coldest],
} if some e in input.charge_sources
