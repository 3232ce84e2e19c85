# METADATA
# title: A conductor of its own leads back
# description: Nobody knows the resistance of rivets and hinges. Over the chassis a drop cannot be told, and a loose joint heats.
# custom:
#   grade: advise
#   each: cable_runs
#   source: common practice; codes allow the chassis as a return
#   remedy: run a second conductor back to the bank
package codebooks.vehicle.chassis_return

import data.codebooks.vehicle.shared

check contains {
	"about": r.id, "when": shared.vehicle(input.site), "otherwise": "not a vehicle",
	"is_true": fact.no(r.declared.chassis_return), "because": "the chassis is its second conductor",
} if {
	some r in input.cable_runs
	not shared.on_ac(r)
}

check contains {"about": r.id, "does_not_apply": "on the AC side, where the chassis is never a conductor"} if {
	some r in input.cable_runs
	shared.on_ac(r)
}
