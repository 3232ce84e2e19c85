# METADATA
# title: An inverter that charges stands in the design as a charge source
# description: An inverter-charger on shore or engine power charges the bank as the sun does. An engine that is written beside it does not stand for it. What is not written down is in no sum, and in no judgement of the bank's charge.
# custom:
#   grade: fix
#   each: ac_outputs
#   source: common practice
#   remedy: write a charge_source for it on the same bank, with the current and voltage that are set, whether it may charge together with the sun, and through_inverter
package codebooks.limits.inverter_charger

check contains {
	"about": o.id, "when": charges(o), "otherwise": "it only inverts",
	"is_true": fact.any([c.declared.through_inverter | some c in sources(o)]), "because": "it charges its bank, and no charge source of that bank is written as the inverter's own",
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

sources(o) := [c | some c in input.charge_sources; c.bank.id == o.bank.id]
