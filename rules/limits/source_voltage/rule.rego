# METADATA
# title: Other source's voltage no higher than the battery bears
# description: An alternator, a shore charger or a generator charges the same battery. Its regulator does not know that the battery was changed.
# custom:
#   grade: stop
#   each: charge_sources
#   waivable: false
#   source: maker's data sheet
#   remedy: set the source's regulator to the battery, or put a charger made for it between
package codebooks.limits.source_voltage

check contains {
	"about": e.id, "is": e.charge_voltage, "at_most": fact.times([e.bank.series, e.bank.battery.absorption_max]),
} if some e in input.charge_sources
