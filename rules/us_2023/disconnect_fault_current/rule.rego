# METADATA
# title: Disconnects bear the fault current of their circuit
# description: A switch that is closed onto a fault, or stands in one, must hold together for what the bank or the array gives.
# custom:
#   grade: fix
#   each: disconnects
#   source: NEC 2023 690.13, 690.15, 706.15
#   cites: [nec_2023]
#   remedy: use a switch with a higher short-circuit rating, or a current-limiting fuse ahead of it that its listing names
package codebooks.us_2023.disconnect_fault_current

import data.codebooks.us_2023.shared

check contains {
	"about": d.id, "when": shared.covered(d, input.site), "otherwise": "not under this code",
	"is": d.declared.fault_current, "at_least": r.fault_current_near,
} if {
	some d in input.disconnects
	not shared.on_ac(d)
	some r in shared.runs_beside(d, input.cable_runs)
}

check contains {
	"about": d.id, "is_true": false, "because": "no conductor is described beside it", "remedy": "add the cable_run that it stands in",
} if {
	some d in input.disconnects
	not shared.on_ac(d)
	count(d.cable_runs) == 0
}

check contains {"about": d.id, "does_not_apply": "on the AC side"} if {
	some d in input.disconnects
	shared.on_ac(d)
}
