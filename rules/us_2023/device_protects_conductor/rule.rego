# METADATA
# title: Fuses and breakers are no larger than their conductor allows
# description: "The device protects the conductor as it lies: its ampacity after corrections, or the next standard size where that is none, up to 800 A. What feeds receptacles does not get the next size up, and a load's circuit may be one."
# custom:
#   grade: stop
#   each: protections
#   waivable: false
#   source: NEC 2023 110.14(C), 240.4(B), 240.6(A), 690.9, 706.31(A)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a smaller device or a larger conductor
#   answers:
#     - rule: limits.fuse_protects_conductor
package codebooks.us_2023.device_protects_conductor

import data.codebooks.us_2023.shared

check contains {
	"about": p.id, "when": shared.covered(p, input.site), "otherwise": "not under this code",
	"is": p.rating, "at_most": shared.largest_device(p, r),
} if {
	some p in input.protections
	some r in shared.runs_beside(p, input.cable_runs)
}

check contains {
	"about": p.id, "is_true": false, "because": "no conductor is described that it protects",
	"remedy": "add the cable_run that it protects beside it",
} if {
	some p in input.protections
	not shared.in_each(p)
	count(p.cable_runs) == 0
}

check contains {"about": p.id, "does_not_apply": "the links between batteries are their maker's"} if {
	some p in input.protections
	shared.in_each(p)
}
