# METADATA
# title: An inverter that charges stands in the design as a charge source
# description: An inverter-charger on shore or engine power charges the bank as the sun does. What is not written down is in no sum, and in no judgement of the bank's charge.
# custom:
#   grade: fix
#   each: ac_outputs
#   source: common practice
#   remedy: write a charge_source for it on the same bank, with the current and voltage that are set, and whether it may charge together with the sun
package codebooks.limits.inverter_charger

check contains {
	"about": o.id, "when": charges(o), "otherwise": "it only inverts",
	"is_true": true, "because": "a charge source is written for its bank",
} if {
	some o in input.ac_outputs
	count(sources(o)) > 0
}

check contains {
	"about": o.id, "when": charges(o), "otherwise": "it only inverts",
	"is_true": false, "because": "it charges its bank, and no charge source is written for that bank",
} if {
	some o in input.ac_outputs
	count(sources(o)) == 0
}

charges(o) := fact.more_than(o.inverter.charge_current_max, fact.number(0, "A"))

sources(o) := {c.id | some c in input.charge_sources; c.bank.id == o.bank.id}
