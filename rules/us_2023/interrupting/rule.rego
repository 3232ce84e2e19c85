# METADATA
# title: Fuses and breakers can interrupt what a fault draws
# description: A lithium bank gives thousands of amperes into a short circuit. A device must be rated for what is available where it stands. One without a mark counts as 5 kA if it is a breaker, 10 kA if it is a fuse; these marks are for alternating current, so a design states a dc figure.
# custom:
#   grade: stop
#   each: protections
#   waivable: false
#   source: NEC 2023 110.9, 240.60, 240.83, 706.31(C)
#   cites: [nec_2023]
#   remedy: use a device with more interrupting capacity
package codebooks.us_2023.interrupting

import data.codebooks.us_2023.shared

check contains {
	"about": x.id, "when": shared.covered(x, input.site), "otherwise": "not under this code",
	"is": x.fault_current, "at_most": x.interrupts,
} if {
	some x in input.protections
	not shared.on_ac(x)
}

check contains {"about": x.id, "does_not_apply": "on the AC side"} if {
	some x in input.protections
	shared.on_ac(x)
}
