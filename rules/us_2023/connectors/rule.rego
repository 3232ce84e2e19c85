# METADATA
# title: Plugs that mate are of one make and type, or listed to be mated
# description: Plugs of two makers fit each other and carry current for a while. The contacts differ, corrode and burn.
# custom:
#   grade: fix
#   each: strings
#   source: NEC 2023 690.33
#   cites: [nec_2023_memory]
#   remedy: fit plugs of the panels' make and type, or a pair that is listed to be mated
package codebooks.us_2023.connectors

import data.codebooks.us_2023.shared

# Whether unlike plugs are listed to be mated decides first.
check contains {
	"about": s.id, "when": fact.all([shared.on_land(input.site), fact.no(s.array.declared.connectors_intermatable)]), "otherwise": "the plugs are listed to be mated, or not under this code",
	"all_equal": plugs, "because": "plugs of different makes or types would be mated, and are not listed for it",
} if {
	some s in input.strings
	count(runs(s)) > 0
	plugs := array.concat([p.connector | some p in s.panels], [r.connector | some r in runs(s)])
}

check contains {
	"about": s.id, "is_true": false, "because": "no conductor is described that the string's plugs mate with", "remedy": "add the string's or the array's cable_run with its connector",
} if {
	some s in input.strings
	count(runs(s)) == 0
}

# The conductor that the string's plugs mate with: its own, else its array's.
runs(s) := s.cable_runs if count(s.cable_runs) > 0

runs(s) := s.array.cable_runs if count(s.cable_runs) == 0
