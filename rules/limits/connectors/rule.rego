# METADATA
# title: Plugs that mate are of one make and type
# description: Plugs of two makers fit each other and carry current for a while. The contacts differ, corrode and burn.
# custom:
#   grade: fix
#   each: strings
#   source: common practice
#   remedy: fit plugs of the panels' make and type on the string's conductors, or cut and join properly
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "nothing is described: 0 is fewer than either"
#     - mutant: "1 / 1.01"
#       reason: "nothing is described: 0 is fewer than either"
package codebooks.limits.connectors

check contains {"about": s.id, "all_equal": plugs, "because": "plugs of different makes or types would be mated"} if {
	some s in input.strings
	count(runs(s)) > 0
	plugs := array.concat([p.connector | some p in s.panels], [r.connector | some r in runs(s)])
}

check contains {
	"about": s.id, "is": fact.number(0, ""), "at_least": fact.number(1, ""),
	"say": "No conductor is described that the plugs of {about} mate with.",
} if {
	some s in input.strings
	count(runs(s)) == 0
}

# The conductor that the string's plugs mate with: its own, else its array's.
runs(s) := s.cable_runs if count(s.cable_runs) > 0

runs(s) := s.array.cable_runs if count(s.cable_runs) == 0
