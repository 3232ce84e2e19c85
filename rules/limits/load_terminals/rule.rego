# METADATA
# title: Loads on the controller's terminals within their rating
# description: A controller's load terminals are a small electronic switch. Beyond its rating it opens or burns.
# custom:
#   grade: fix
#   each: chargers
#   source: maker's data sheet
#   remedy: move loads to the bank, each with its fuse
package codebooks.limits.load_terminals

check contains {"about": c.id, "is": c.load_terminals_current, "at_most": c.controller.load_current_max} if {
	some c in input.chargers
	count(hung(c)) > 0
}

check contains {"about": c.id, "does_not_apply": "nothing hangs on its load terminals"} if {
	some c in input.chargers
	count(hung(c)) == 0
}

hung(c) := [l | some l in input.loads; some o in l.chargers; o.id == c.id]
