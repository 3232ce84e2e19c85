# METADATA
# title: An inverter does not eat the day's energy by itself
# description: A large inverter that is left on takes more in a day than a small load behind it, sun or not.
# custom:
#   grade: advise
#   each: ac_outputs
#   source: common practice
#   remedy: switch it off when it is not needed (hours_per_day), choose one of lower idle draw, or run the small loads on DC
package codebooks.practice.idle_share

check contains {
	"about": o.id,
	"is": fact.times([o.inverter.idle, o.hours_per_day, fact.number(1, "h")]),
	"at_most": fact.times([input.params.idle_share_max, o.bank.daily_load]),
} if some o in input.ac_outputs
