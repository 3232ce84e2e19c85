# METADATA
# title: No inverter or motor on the controller's load terminals
# description: "Inverters and motors take many times their current for a moment. It burns the small switch behind a controller's load terminals: they belong on the bank."
# custom:
#   grade: fix
#   each: loads
#   source: common practice
#   remedy: put the inverter or motor on the bank, with its own fuse
package codebooks.limits.load_terminals_surge

check contains {"about": l.id, "is": l.surge_current, "at_most": c.controller.load_current_max} if {
	some l in input.loads
	some c in l.chargers
}

check contains {"about": l.id, "does_not_apply": "not on a controller's load terminals"} if {
	some l in input.loads
	count(l.chargers) == 0
}
