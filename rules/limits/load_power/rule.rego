# METADATA
# title: Each load on an inverter within its power and surge
# description: A motor takes two to six times its power for a moment. An inverter that cannot give it switches off, each time.
# custom:
#   grade: fix
#   each: loads
#   source: maker's data sheet
#   remedy: choose a larger inverter, or a motor that starts gently
package codebooks.limits.load_power

check contains {"about": l.id, "which": "power", "is": l.power, "at_most": o.inverter.continuous} if {
	some l in input.loads
	some o in l.ac_outputs
}

check contains {"about": l.id, "which": "surge", "is": l.surge, "at_most": o.inverter.surge} if {
	some l in input.loads
	some o in l.ac_outputs
}

check contains {"about": l.id, "does_not_apply": "not on an inverter"} if {
	some l in input.loads
	count(l.ac_outputs) == 0
}
